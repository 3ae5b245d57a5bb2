using System.Text;
using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Formats.Psd;

/// <summary>Makes the model of a blank file: a backdrop, a guide on the centre line, and on request groups from head to toe.</summary>
internal static class PsdNewFile
{
    private const int ColorCount = 3;
    private const int BitDepth = 8;

    /// <summary>Front to back, as a body is stacked (common practice): hair front and hair back hold the rest between them. A number says the depth.</summary>
    private static readonly (int Depth, string Name)[] Skeleton =
    [
        (0, "Hair Front"),
        (0, "Head"), (1, "Eye L"), (1, "Eye R"), (1, "Mouth"), (1, "Nose"), (1, "Face"), (1, "Ear L"), (1, "Ear R"),
        (0, "Neck"),
        (0, "Arm L"), (1, "Hand L"), (0, "Arm R"), (1, "Hand R"),
        (0, "Torso"), (0, "Hips"),
        (0, "Leg L"), (1, "Foot L"), (0, "Leg R"), (1, "Foot R"),
        (0, "Hair Back"),
    ];

    public static LayerFile Create(string path, NewFileOptions options)
    {
        var format = string.Equals(Path.GetExtension(path), ".psb", StringComparison.OrdinalIgnoreCase) ? FileFormat.Psb : FileFormat.Psd;
        Check(format, options);
        var header = new PsdHeader(format, new byte[6], ColorCount, options.Height, options.Width, BitDepth, (int)ColorMode.Rgb);
        var detail = new PsdFileDetail { Header = header, MergedPicture = MemoryBytes.Empty, Resources = [new PsdResource(PsdResource.Version, WriteVersion()), new PsdResource(PsdResource.Thumbnail, [])] };
        var file = new LayerFile(path, format, options.Width, options.Height, ColorMode.Rgb, BitDepth, detail)
        {
            Ppi = options.Ppi,
            Guides = [new Guide(options.Width / 2.0, IsVertical: true)],
            IsPictureStale = true,
        };
        if (options.Skeleton) AddSkeleton(file);
        AddBackdrop(file, options.BackdropRgb);
        file.Renumber();
        return file;
    }

    private static void Check(FileFormat format, NewFileOptions options)
    {
        const double HighestPpi = 30_000;
        var largest = CanvasLimits.LongestSide(format);
        if (options.Width < 1 || options.Width > largest) throw new ArgumentOutOfRangeException(nameof(options), options.Width, $"The width must be 1 to {largest} px.");
        if (options.Height < 1 || options.Height > largest) throw new ArgumentOutOfRangeException(nameof(options), options.Height, $"The height must be 1 to {largest} px.");
        if (!(options.Ppi >= 1 && options.Ppi <= HighestPpi)) throw new ArgumentOutOfRangeException(nameof(options), options.Ppi, $"The resolution must be 1 to {HighestPpi} pixels per inch.");
    }

    private static void AddSkeleton(LayerFile file)
    {
        var groups = new Stack<Layer>();
        groups.Push(file.Root);
        foreach (var (depth, name) in Skeleton)
        {
            while (groups.Count > depth + 1) groups.Pop();
            var group = new Layer(LayerKind.Group, name, file.Detail.CreateLayerDetail(LayerKind.Group)) { BlendMode = BlendMode.PassThrough, Id = file.CreateId() };
            groups.Peek().Append(group);
            groups.Push(group);
        }
    }

    private static void AddBackdrop(LayerFile file, int rgb)
    {
        var backdrop = new Layer(LayerKind.Pixel, "Backdrop", file.Detail.CreateLayerDetail(LayerKind.Pixel)) { Bounds = new Bounds(0, 0, file.Width, file.Height), Id = file.CreateId() };
        var channels = new[] { (PlaneRole.Alpha, byte.MaxValue), (PlaneRole.Color0, (byte)(rgb >> 16)), (PlaneRole.Color1, (byte)(rgb >> 8)), (PlaneRole.Color2, (byte)rgb) };
        foreach (var (role, value) in channels)
        {
            backdrop.Planes.Add(PlanePacker.Pack(role, Compression.PackBits, file.Width, file.Height, BitDepth, file.Format, (_, row) => row.Fill(value), file.Spool));
        }

        file.Root.Append(backdrop);
    }

    /// <summary>version 4, real picture 1, then who wrote and who reads it as UTF-16 with a count, file version 4 (resource 1057).</summary>
    private static byte[] WriteVersion()
    {
        const string Writer = "LayerTools";
        var output = new PsdOutput();
        output.WriteInt32(1);
        output.WriteByte(1);
        for (var i = 0; i < 2; i++)
        {
            output.WriteInt32(Writer.Length);
            output.Write(Encoding.BigEndianUnicode.GetBytes(Writer));
        }

        output.WriteInt32(1);
        return output.ToArray();
    }
}
