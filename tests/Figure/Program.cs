using LayerTools.Figure;
using LayerTools.Figure.Parts;

var tree = Keeper.Create(120);
Console.WriteLine(tree.Sum(part => part.CountLayers()));
Preview.Write("/tmp/h/figure-preview.png", tree, 0.2f);
