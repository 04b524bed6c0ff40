namespace NanoDustSwitch.EnclosureTests;

/// <summary>The surface of a part, as a printer's slicer gets it: triangles from an STL file in text.</summary>
internal sealed class StlMesh
{
    private readonly List<Point[]> _triangles = [];

    /// <summary>Initializes a new instance of the <see cref="StlMesh"/> class.</summary>
    /// <param name="lines">The lines of an STL file in text.</param>
    public StlMesh(IEnumerable<string> lines)
    {
        List<Point> corners = [];
        foreach (string line in lines)
        {
            string[] words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (words is ["vertex", var x, var y, var z])
            {
                corners.Add(new Point(double.Parse(x), double.Parse(y), double.Parse(z)));
            }
        }

        for (int i = 0; i + 2 < corners.Count; i += 3)
        {
            _triangles.Add([corners[i], corners[i + 1], corners[i + 2]]);
        }
    }

    public int Triangles => _triangles.Count;

    public Point Least => new(Corners.Min(point => point.X), Corners.Min(point => point.Y), Corners.Min(point => point.Z));

    public Point Greatest => new(Corners.Max(point => point.X), Corners.Max(point => point.Y), Corners.Max(point => point.Z));

    /// <summary>Gets the volume in mm³; negative when the surface is inside out.</summary>
    public double Volume => _triangles.Sum(t =>
        (t[0].X * ((t[1].Y * t[2].Z) - (t[1].Z * t[2].Y)))
        + (t[0].Y * ((t[1].Z * t[2].X) - (t[1].X * t[2].Z)))
        + (t[0].Z * ((t[1].X * t[2].Y) - (t[1].Y * t[2].X)))) / 6;

    private IEnumerable<Point> Corners => _triangles.SelectMany(triangle => triangle);

    /// <summary>
    /// Counts the edges that are not shared by exactly two triangles that run along them in opposite directions.
    /// </summary>
    public int OpenEdges()
    {
        Dictionary<(Point From, Point To), int> edges = [];
        foreach (Point[] triangle in _triangles)
        {
            for (int i = 0; i < 3; i++)
            {
                (Point From, Point To) edge = (triangle[i], triangle[(i + 1) % 3]);
                edges[edge] = edges.GetValueOrDefault(edge) + 1;
            }
        }

        return edges.Count(edge =>
            edge.Value != 1 || edge.Key.From == edge.Key.To || edges.GetValueOrDefault((edge.Key.To, edge.Key.From)) != 1);
    }

    /// <summary>Where a line along x goes through the surface.</summary>
    /// <param name="y">Its place across.</param>
    /// <param name="z">Its height.</param>
    /// <returns>The x of every crossing, in order.</returns>
    public List<double> AlongX(double y, double z)
    {
        List<double> crossings = [];
        foreach (Point[] t in _triangles)
        {
            // The line's place in the triangle as seen along x, in shares of the corners.
            double area = ((t[1].Y - t[0].Y) * (t[2].Z - t[0].Z)) - ((t[2].Y - t[0].Y) * (t[1].Z - t[0].Z));
            if (area == 0)
            {
                continue;
            }

            double second = (((y - t[0].Y) * (t[2].Z - t[0].Z)) - ((t[2].Y - t[0].Y) * (z - t[0].Z))) / area;
            double third = (((t[1].Y - t[0].Y) * (z - t[0].Z)) - ((y - t[0].Y) * (t[1].Z - t[0].Z))) / area;
            if (second >= 0 && third >= 0 && second + third <= 1)
            {
                crossings.Add(t[0].X + (second * (t[1].X - t[0].X)) + (third * (t[2].X - t[0].X)));
            }
        }

        crossings.Sort();
        return crossings;
    }
}
