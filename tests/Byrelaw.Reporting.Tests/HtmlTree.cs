using System.Xml;
using System.Xml.Linq;

namespace Byrelaw.Reporting.Tests;

/// <summary>
/// Reads our HTML as a tree. The pages are written so that an XML reader takes them too, which is
/// stricter than any browser: an unclosed or misplaced element fails.
/// </summary>
internal static class HtmlTree
{
    public static XElement Parse(string html)
    {
        using var reader = XmlReader.Create(new StringReader(html), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore, XmlResolver = null });
        return Plain(XDocument.Load(reader).Root!);
    }

    /// <summary>Elements and attributes in order, without any text: what hostile words must never change.</summary>
    public static string Outline(XElement element) => string.Join('\n', element.DescendantsAndSelf()
        .Select(one => $"{one.Ancestors().Count()} {one.Name} {string.Join(' ', one.Attributes().Select(attribute => attribute.Name))}"));

    private static XElement Plain(XElement element) => new(
        element.Name.LocalName, element.Attributes().Where(attribute => !attribute.IsNamespaceDeclaration),
        element.Nodes().Select(node => node is XElement child ? Plain(child) : node));
}
