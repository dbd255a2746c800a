using System.Globalization;
using System.Text;
using NodaTime.Text;

namespace Byrelaw.Benchmarks;

/// <summary>The made-up herd as the two files that a farm would hand in.</summary>
internal static class MadeUpFiles
{
    private static readonly SourceSpan Span = new(new SourceFile("made-up.byre", "-"), 0, 1);

    /// <summary>Everything is on record, since before anything happened.</summary>
    public static RecordKeeping Keeping { get; } = new(
        ".", MadeUpHerd.Known, [new Completeness([.. MadeUpHerd.Words.Kinds.Where(kind => kind.Name != "mob")], MadeUpHerd.Known.PlusDays(-4000), Span)], [], Span);

    /// <summary>Writes the files of a herd into a folder; returns how many events there are.</summary>
    public static int Write(string folder, int count)
    {
        var herd = MadeUpHerd.Of(count);
        using (var animals = new StreamWriter(Path.Combine(folder, "animals.csv"), false, new UTF8Encoding(false), 1 << 20))
        {
            animals.Write("animal,born,sex\n");
            for (var animal = 0; animal < count; animal++)
            {
                animals.Write(string.Create(
                    CultureInfo.InvariantCulture, $"{herd.Numbers[animal]},{Date(herd.BornEarliest[animal])},F\n"));
            }
        }

        using var events = new StreamWriter(Path.Combine(folder, "events.csv"), false, new UTF8Encoding(false), 1 << 20);
        events.Write("date,animal,kind,value,unit,note,recorded\n");
        var written = 0;
        var calvings = new List<int>();
        for (var animal = 0; animal < count; animal++)
        {
            calvings.Clear();
            foreach (var kind in MadeUpHerd.Words.Kinds)
            {
                var run = herd.Runs[kind.Id];
                for (var i = run.Starts[animal]; i < run.Starts[animal + 1]; i++)
                {
                    events.Write(string.Create(
                        CultureInfo.InvariantCulture, $"{Date(run.Days[i])},{herd.Numbers[animal]},{CanBe(kind.Name, run.Days[i], calvings)},{Value(kind, run, i)},,,\n"));
                    written++;
                }
            }
        }

        return written;
    }

    /// <summary>What is drawn at random may be what no cow can do: a calving too soon after another, or after a service. Then it is a heat, for what cannot be is doubted, and a plain loop doubts nothing.</summary>
    /// <param name="kind">What was drawn; calvings come first.</param>
    /// <param name="day">When.</param>
    /// <param name="calvings">Hers so far.</param>
    private static string CanBe(string kind, int day, List<int> calvings)
    {
        const int Soonest = 200;
        switch (kind)
        {
            case "calving" when calvings.Count > 0 && day - calvings[^1] < Soonest:
                return "heat";
            case "calving":
                calvings.Add(day);
                return kind;
            case "mating" or "transfer" when calvings.Exists(calving => calving >= day && calving - day < Soonest):
                return "heat";
            default:
                return kind;
        }
    }

    private static string Date(int day) => LocalDatePattern.Iso.Format(Day.Date(day));

    private static string Value(Kind kind, KindRun run, int i) => kind switch
    {
        MeasureKind => run.Low[i].ToString(CultureInfo.InvariantCulture),
        TestKind test => test.Answers[run.Answers[i]],
        _ => "",
    };
}
