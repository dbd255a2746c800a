using System.Runtime.CompilerServices;

namespace Byrelaw.Reporting.Documents;

/// <summary>
/// Words on one line, some of them set off. Plain words turn into it by themselves, and so does an interpolated string, whose
/// holes may hold either: <c>$"{Wording.Bold(number)} · {answer}"</c>.
/// </summary>
[InterpolatedStringHandler]
public sealed class Wording
{
    private readonly List<Run> _runs = [];

    /// <summary>No words.</summary>
    public Wording()
    {
    }

    /// <summary>For the compiler, which takes an interpolated string apart.</summary>
    public Wording(int literalLength, int formattedCount)
    {
        _ = (literalLength, formattedCount);
    }

    /// <summary>The stretches, in order; none is empty.</summary>
    public IReadOnlyList<Run> Runs => _runs;

    /// <summary>Whether there are no words.</summary>
    public bool IsEmpty => _runs.TrueForAll(run => PlainText.Clean(run.Text).Length == 0);

    /// <summary>Words in bold; none for none.</summary>
    public static Wording Bold(string words) => new Wording().Add(PlainText.Clean(words), RunStyle.Bold);

    /// <summary>Words made faint on a terminal; none for none.</summary>
    public static Wording Faint(string words) => new Wording().Add(PlainText.Clean(words), RunStyle.Faint);

    /// <summary>What the floor says of her, as a label; nothing for nothing.</summary>
    public static Wording Danger(InCalf inCalf) => new Wording().Add(InCalfWords.Of(inCalf), inCalf == InCalf.TakeAsInCalf ? RunStyle.Danger : RunStyle.MayBe);

    /// <summary>The same before a list of numbers.</summary>
    public static Wording Label(InCalf inCalf) => new Wording().Add(InCalfWords.OfMany(inCalf), inCalf == InCalf.TakeAsInCalf ? RunStyle.Danger : RunStyle.MayBe);

    /// <summary>Words in a frame; none for none.</summary>
    public static Wording Note(string words) => new Wording().Add(PlainText.Clean(words), RunStyle.Note);

    /// <summary>An answer, as on a list of this use.</summary>
    public static Wording Answer(Answer answer, ListUse use = default) => new Wording().Add(AnswerWords.Both(answer, use), answer switch
    {
        Judging.Verdicts.Answer.Ready => RunStyle.Ready,
        Judging.Verdicts.Answer.OnCourse => RunStyle.OnCourse,
        Judging.Verdicts.Answer.Later => RunStyle.Later,
        Judging.Verdicts.Answer.Ask => RunStyle.Ask,
        _ => RunStyle.No,
    });

    /// <summary>Words that lead to a file of this report, or to a place of this page.</summary>
    /// <param name="words">What is shown.</param>
    /// <param name="target">Made by <see cref="Files.FileNames"/> or <see cref="Anchors"/>: no blanks, brackets or quotes.</param>
    public static Wording Link(Wording words, string target)
    {
        var link = new Wording();
        link._runs.AddRange(words._runs.Select(run => run with { Target = target }));
        return link;
    }

    /// <summary>Several one after the other, with plain words between them.</summary>
    public static Wording Join(string between, IEnumerable<Wording> parts)
    {
        var all = new Wording();
        foreach (var part in parts)
        {
            all.AppendLiteral(all._runs.Count > 0 ? between : "");
            all.AppendFormatted(part);
        }

        return all;
    }

    /// <summary>Plain words.</summary>
    public static implicit operator Wording(string words) => new Wording().Add(words, RunStyle.Plain);

    /// <summary>Adds plain words; for the compiler.</summary>
    public void AppendLiteral(string words) => Add(words, RunStyle.Plain);

    /// <summary>Adds plain words; for the compiler.</summary>
    public void AppendFormatted(string? words) => Add(words ?? "", RunStyle.Plain);

    /// <summary>Adds words that are set off; for the compiler.</summary>
    public void AppendFormatted(Wording words) => _runs.AddRange(words._runs);

    /// <summary>Adds a number; for the compiler.</summary>
    public void AppendFormatted<T>(T value, string? format = null)
        where T : IFormattable => Add(value.ToString(format, CultureInfo.InvariantCulture), RunStyle.Plain);

    /// <summary>The words alone.</summary>
    public override string ToString() => PlainText.Clean(string.Concat(_runs.Select(run => run.Text)));

    private Wording Add(string words, RunStyle style)
    {
        if (words.Length > 0)
        {
            _runs.Add(new Run(words, style));
        }

        return this;
    }
}
