using System.Text.RegularExpressions;
using OxyPlot;
using OxyPlot.Axes;

namespace Byrelaw.Reporting.Pictures;

/// <summary>Charts as pictures inside a page: ink only, in the page's own colours, with a title that is read aloud.</summary>
internal static partial class Chart
{
    private const int Width = 760;

    /// <summary>An empty chart with ink axes.</summary>
    public static PlotModel Empty() => new()
    {
        DefaultFont = "sans-serif",
        DefaultFontSize = 13,
        PlotAreaBorderThickness = new OxyThickness(1, 0, 0, 1),
        PlotMargins = new OxyThickness(56, 10, 16, 42),
        TextColor = OxyColors.Black,
    };

    /// <summary>An axis of whole numbers from 0.</summary>
    public static LinearAxis Counting(string title, double most) => new()
    {
        Position = AxisPosition.Left,
        Title = title,
        Minimum = 0,
        Maximum = Math.Max(1, most * 1.08),
        MinimumMajorStep = 1,
        MinorTickSize = 0,
        MajorGridlineStyle = LineStyle.Dot,
        MajorGridlineColor = OxyColors.Gray,
        AxisTitleDistance = 12,
    };

    /// <summary>The figure for a page.</summary>
    /// <param name="model">What to draw.</param>
    /// <param name="height">Of the picture, with a width of 760.</param>
    /// <param name="title">Read aloud in its place.</param>
    /// <param name="caption">Plain words below it.</param>
    public static string Figure(PlotModel model, int height, string title, string caption)
    {
        var svg = SvgExporter.ExportToString(model, Width, height, isDocument: false, textMeasurer: null, useVerticalTextAlignmentWorkaround: true);
        svg = svg[svg.IndexOf("<svg", StringComparison.Ordinal)..].ReplaceLineEndings("\n");
        svg = Head().Replace(svg, $"<svg class=\"picture chart\" viewBox=\"0 0 {Width} {height}\" width=\"100%\" role=\"img\" aria-label=\"{HtmlText.Of(title)}\" xmlns=\"http://www.w3.org/2000/svg\">", 1);
        svg = svg.Replace("stroke:black", "stroke:currentColor", StringComparison.Ordinal)
            .Replace("fill:black", "fill:currentColor", StringComparison.Ordinal)
            .Replace("fill=\"black\"", "fill=\"currentColor\"", StringComparison.Ordinal);

        // Several pictures may stand on one page: each has names of its own.
        svg = ClipName().Replace(svg, $"{NameOf(title)}-$1");
        return $"<figure>\n{svg.TrimEnd()}\n<figcaption>{HtmlText.Of(caption)}</figcaption>\n</figure>\n";
    }

    private static string NameOf(string title) => string.Concat(title.ToLowerInvariant().Where(char.IsAsciiLetter).Take(24));

    [GeneratedRegex("<svg [^>]*>")]
    private static partial Regex Head();

    [GeneratedRegex(@"clipPath(\d+)")]
    private static partial Regex ClipName();
}
