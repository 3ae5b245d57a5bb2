namespace LayerTools.Figure.Parts;

/// <summary>The invented figure: a lighthouse keeper's apprentice, stacked as a body is and named as a tired artist names.</summary>
internal static class Keeper
{
    public const int Width = 5000;

    public const int Height = 6000;

    /// <summary>The tree, front to back, with exactly the wanted number of layers besides groups.</summary>
    public static IReadOnlyList<FigurePart> Create(int layers)
    {
        List<FigurePart> tree =
        [
            SceneParts.CreateGuide(),
            SceneParts.CreateSketch(),
            LanternParts.CreateLight(),
            HatParts.Create(),
            HairParts.CreateFront(),
            HairParts.CreateSide("L"),
            HairParts.CreateSide("R"),
            FaceParts.CreateFace(),
            FaceParts.CreateHead(),
            ScarfParts.Create(),
            FaceParts.CreateNeck(),
            ArmParts.Create(),
            LanternParts.CreateLantern(),
            CoatParts.CreateFront(),
            CoatParts.CreateTorso(),
            LegParts.CreateHip(),
            LegParts.Create("L"),
            LegParts.Create("R"),
            HairParts.CreateBack(),
            CoatParts.CreateBack(),
            SceneParts.CreateFloor(),
            SceneParts.CreateBackdrop(),
        ];
        return tree;
    }
}
