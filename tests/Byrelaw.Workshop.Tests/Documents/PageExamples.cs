using System.Collections.Immutable;
using Byrelaw.Workshop.Tests.Tidying;

namespace Byrelaw.Workshop.Tests.Documents;

/// <summary>
/// Reads the <c>byre</c> blocks of a page, in order. <c>byre words</c> are the words that later blocks may use,
/// <c>byre file NAME</c> is kept under its name, <c>byre rules</c> stands over the words, <c>byre conditions</c> holds a condition a
/// line, and a plain <c>byre</c> is a whole file. <c>byre tidy</c> is how the example before it is printed the one way. A <c>problems</c> block says what is wrong with the block before it; a
/// block that is followed by none has nothing wrong with it.
/// </summary>
internal sealed class PageExamples
{
    private const string Words = "words.byre";
    private const string Example = "example.byre";

    private readonly RuleFilesInMemory _files = new();
    private readonly List<string> _unstated = [];
    private string _problems = "";
    private int _line;

    /// <summary>How many blocks of rule text were read.</summary>
    public int Count { get; private set; }

    /// <summary>Problems that the page does not state, and statements of problems where there are none.</summary>
    public IReadOnlyList<string> Unstated
    {
        get
        {
            Close();
            return _unstated;
        }
    }

    public string? Outcome(Fence fence)
    {
        if (fence.Language == "problems")
        {
            if (_problems.Length == 0)
            {
                _unstated.Add($"line {fence.Line}: nothing is wrong with the example before it");
            }

            var stated = _problems;
            _problems = "";
            return stated.TrimEnd('\n') + "\n";
        }

        Close();
        if (fence is { Language: "byre", Rest: "tidy" })
        {
            return Tidied.Text(Tidier.Tidy(Example, _files)!, $"line {fence.Line}");
        }

        if (fence.Language == "byre")
        {
            Count++;
            _line = fence.Line;
            _problems = DiagnosticText.Of(Read(fence));
        }

        return null;
    }

    private void Close()
    {
        if (_problems.Length > 0)
        {
            _unstated.Add($"line {_line}:\n{_problems}");
            _problems = "";
        }
    }

    private ImmutableArray<Diagnostic> Read(Fence fence)
    {
        var (name, text) = fence.Rest.Split(' ') switch
        {
            ["words"] => (Words, fence.Text),
            ["file", var file] => (file, fence.Text),
            ["rules"] => (Example, fence.Text + $"use \"{Words}\"\n"),
            ["conditions"] or ["conditions", "typed"] => (Example, OneRuleEach(fence.Text)),
            [""] => (Example, fence.Text),
            _ => throw new FormatException($"line {fence.Line}: no such kind of example: {fence.Rest}"),
        };
        _files.Add(name, text);
        return RulebookReader.Read(name, _files)!.Problems;
    }

    private static string OneRuleEach(string conditions)
    {
        var text = new StringBuilder($"use \"{Words}\"\nrules for recipients\n");
        foreach (var (condition, i) in conditions.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select((line, i) => (line, i)))
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"rule \"{i}\"\nneeds {condition}\nbecause \"x\"\nsource \"x\"\n");
        }

        return text.ToString();
    }
}
