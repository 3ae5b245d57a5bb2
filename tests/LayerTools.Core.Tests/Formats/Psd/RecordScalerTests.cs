using System.Buffers.Binary;
using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Formats.Psd;
using LayerTools.Model;
using LayerTools.Model.Effects;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Formats.Psd;

public class RecordScalerTests
{
    private static readonly CanvasScale Half = new(100, 100, 50, 50);
    private static readonly CanvasScale Wide = new(100, 100, 200, 50);

    public static TheoryData<string> Files() => [.. SharedFiles.Fixtures.Concat(SharedFiles.FindLayered("corpus")).Concat(SharedFiles.FindLayered("models"))];

    [Theory]
    [MemberData(nameof(Files))]
    public void Effects_of_real_files_have_half_the_size(string path)
    {
        foreach (var (file, layer) in ReadLayers(path))
        {
            var before = layer.Detail.GetEffects(file.Detail);
            var after = layer.Detail.Rescale(Half, []).GetEffects(file.Detail);
            Assert.Equal(before.Select(effect => effect.GetType()), after.Select(effect => effect.GetType()));
            Assert.All(before.Zip(after), pair => Assert.Equal(Sizes(pair.First).Select(size => size / 2), Sizes(pair.Second), (one, other) => Math.Abs(one - other) < 0.001));
        }
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_size_and_its_reverse_give_the_layers_of_real_files_back(string path)
    {
        foreach (var (_, layer) in ReadLayers(path))
        {
            var notes = new List<string>();
            var back = layer.Detail.Rescale(Wide, notes).Rescale(new CanvasScale(200, 50, 100, 100), notes);
            var (one, two) = (((PsdLayerDetail)layer.Detail).Record, ((PsdLayerDetail)back).Record);
            Assert.Equal(one.Blocks.Where(block => block.Key != PsdKey.Parse("vogk")).Select(block => (block.Key, block.Data.Length)), two.Blocks.Select(block => (block.Key, block.Data.Length)));
            Assert.Equal(layer.Detail.Features, back.Features);
            Assert.Equal(layer.Kind, LayerTraits.TellKind(two));
        }
    }

    [Fact]
    public void The_frame_of_text_is_scaled_in_each_direction()
    {
        var data = new byte[70];
        Write(data, 2, 1.5, 0.25, -0.25, 1.5, 30, 40);

        var scaled = Scale("TySh", data, Wide);

        Assert.Equal([3, 0.125, -0.5, 0.75, 60, 20], Read(scaled, 2, 6));
    }

    [Fact]
    public void The_corners_of_old_placed_content_are_scaled()
    {
        var data = new byte[8 + 1 + 3 + 16 + 64 + 5];
        data[8] = 3;
        Write(data, 28, 10, 20, 30, 20, 30, 40, 10, 40);

        Assert.Equal([20, 10, 60, 10, 60, 20, 20, 20], Read(Scale("PlLd", data, Wide), 28, 8));
    }

    [Theory]
    [InlineData("TySh", "its text")]
    [InlineData("SoLd", "its placed content")]
    [InlineData("lfx2", "its effects")]
    [InlineData("vstk", "its fill or stroke")]
    public void What_cannot_be_read_stays_as_it_is_and_is_told(string key, string note)
    {
        var notes = new List<string>();
        var record = new PsdRecord { Blocks = [new PsdBlock(key, [0, 0, 0, 1, 0, 0, 0, 16, 0, 0])] };

        var scaled = RecordScaler.Scale(record, Half, notes);

        Assert.Equal([note], notes);
        Assert.True(scaled.GetData(key).SequenceEqual(record.GetData(key)));
    }

    // PSD File Formats Specification, 'Slices resource format': one piece made by hand.
    [Fact]
    public void Slices_are_scaled()
    {
        var data = new List<byte>();
        void Add(params int[] numbers)
        {
            foreach (var number in numbers)
            {
                var bytes = new byte[4];
                BinaryPrimitives.WriteInt32BigEndian(bytes, number);
                data.AddRange(bytes);
            }
        }

        Add(6, 0, 0, 100, 100, 0, 1);
        Add(1, 0, 1, 77, 0, 2, 10, 20, 30, 40, 0, 0, 0, 0);
        data.Add(0);
        Add(0, 0, 0, 0);

        var scaled = Slices.Scale([.. data], Wide);

        Assert.Equal([0, 0, 50, 200], ReadInts(scaled, 4, 4));
        Assert.Equal([20, 10, 60, 20], ReadInts(scaled, 52, 4));
        Assert.Equal([1, 2, 3], Slices.Scale([1, 2, 3], Wide));
    }

    private static IEnumerable<(LayerFile File, Layer Layer)> ReadLayers(string path)
    {
        LayerFile file;
        try
        {
            file = LayerFiles.Read(path);
        }
        catch (LayeredFileException)
        {
            // Which files the tree can be read from is for the reader's tests to say.
            return [];
        }

        return file.GetLayers().Select(layer => (file, layer));
    }

    private static double[] Sizes(Effect effect) => effect switch
    {
        ShadeEffect shade => [shade.Size, shade.Right, shade.Down],
        OutlineEffect outline => [outline.Size],
        _ => [],
    };

    private static byte[] Scale(string key, byte[] data, CanvasScale scale)
    {
        var notes = new List<string>();
        var scaled = RecordScaler.Scale(new PsdRecord { Blocks = [new PsdBlock(key, data)] }, scale, notes);
        Assert.Empty(notes);
        return scaled.GetData(key).ToArray();
    }

    private static void Write(byte[] data, int at, params double[] numbers)
    {
        for (var i = 0; i < numbers.Length; i++) BinaryPrimitives.WriteDoubleBigEndian(data.AsSpan(at + (8 * i)), numbers[i]);
    }

    private static double[] Read(byte[] data, int at, int count) => [.. Enumerable.Range(0, count).Select(i => BinaryPrimitives.ReadDoubleBigEndian(data.AsSpan(at + (8 * i))))];

    private static int[] ReadInts(byte[] data, int at, int count) => [.. Enumerable.Range(0, count).Select(i => BinaryPrimitives.ReadInt32BigEndian(data.AsSpan(at + (4 * i))))];
}
