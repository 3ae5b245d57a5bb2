namespace LayerTools.Model;

/// <summary>A point of an outline with the handles of the curves that come in and go out. All are fractions of the canvas: 0, 0 is its upper left corner and 1, 1 its lower right one.</summary>
internal readonly record struct PathKnot(double InX, double InY, double X, double Y, double OutX, double OutY);
