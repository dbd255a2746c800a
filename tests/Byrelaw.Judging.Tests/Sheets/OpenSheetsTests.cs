using Byrelaw.Judging.Promises;
using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.Sheets;

/// <summary>What stands on a sheet is in doubt until it is on record: by the slow evaluator and by the judge, and never to the good of any animal.</summary>
public sealed class OpenSheetsTests
{
    private static readonly string[] Kinds = [.. Words.Vocabulary.Kinds.Where(kind => kind is TestKind or MeasureKind or EventKind { Effect: HerdEffect.None, IsMobMove: false }
        && !Words.Vocabulary.Spells.Any(spell => spell.From.Id == kind.Id || spell.Until.Id == kind.Id)).Select(kind => kind.Name)];

    private const int Grown = 1000;

    private static readonly Gen<JudgingCase> WithSheets =
        from one in JudgingCase.Any.Where(one => one.Rulebook.Records?.UpTo is not null)
        from days in Gen.Int[-40, 6].Array[1, 3]
        from written in Gen.Int[-3, 0].Array[3]
        from rows in Gen.Select(Gen.Int[0, 20], Gen.Int[0, 50]).Array[1, 4].Array[3]
        from replaced in Gen.Bool
        from later in Gen.Int[0, 12]
        select With(one, days, written, rows, replaced, later);

    [Fact]
    public void The_judge_says_of_open_sheets_what_the_slow_evaluator_says() =>
        Each.Hold(WithSheets, Math.Max(1, Cases.Count / 4), one => Difference.Of(one), Show);

    /// <summary>Some of their rows came back: done on the sheet's day or later, also after what the records reach, or not done.</summary>
    private static readonly Gen<JudgingCase> WithRowsThatCameBack =
        from one in WithSheets
        from back in Gen.Select(Gen.Int[0, 2], Gen.Int[0, 3], Gen.Int[0, 9]).Array[12]
        from said in Gen.Bool
        select Back(said ? one : one with
        {
            // Nobody says how far the records reach: to the latest entry, and no entry of the farm is to come.
            Rulebook = one.Rulebook with { Records = one.Rulebook.Records! with { UpTo = null } },
            Farm = one.Farm with { Today = new LocalDate(2100, 1, 1) },
        }, back);

    [Fact]
    public void The_judge_says_of_rows_that_came_back_what_the_slow_evaluator_says() =>
        Each.Hold(WithRowsThatCameBack, Math.Max(1, Cases.Count / 4), one => Difference.Of(one), Show);

    [Fact]
    public void A_row_that_came_back_moves_no_promise() => Each.Hold(
        WithRowsThatCameBack, Math.Max(1, Cases.Count / 4), one =>
        {
            var (with, without) = (FarmHerd.Of(one).Coverage, FarmHerd.Of(one with { Farm = one.Farm with { Events = [.. one.Farm.Events.Where(row => row.SheetRow.Length == 0)] } }).Coverage);
            return with.Reach.AsSpan().SequenceEqual(without.Reach) && with.Since.AsSpan().SequenceEqual(without.Since) && with.KnownDay == without.KnownDay ? null : "a kind reaches another day";
        }, Show);

    /// <summary>Sheets of animals that may be used without them, where there are any: of others a sheet shows nothing. Of what the rules ask; grown ones, for what
    /// cannot be of one so young no sheet holds, and done it would be a mistake of the book.</summary>
    private static readonly Gen<JudgingCase> WithSheetsThatMatter = WithSheets.Where(one => one.KnownOn is null).Select(one =>
    {
        var usable = Usable(one with { Farm = one.Farm with { Sheets = [] } }).Select(name => name.Split(' ', 2)[1]).Distinct()
            .Where(number => LocalDatePattern.Iso.Parse(one.Farm.Animals.First(animal => animal.Number == number).Born) is { Success: true, Value: var born } && born < one.Rulebook.Records!.UpTo!.Value.PlusDays(-Grown)).ToList();
        var asked = one.Rulebook.Rules.SelectMany(rule => rule.Needs.Leaves(one.Rulebook)).SelectMany(leaf => new ConditionParts(leaf).Kinds).Select(kind => kind.Declaration.Name).Intersect(Kinds).ToList();
        return one with
        {
            Farm = one.Farm with
            {
                Sheets =
                [
                    .. usable.Count == 0 || asked.Count == 0 ? [] : one.Farm.Sheets.Where(sheet => sheet.For <= one.Rulebook.Records!.UpTo)
                        .Select(sheet => sheet with { Rows = [.. sheet.Rows.Select((row, i) => (usable[i % usable.Count], asked[i % asked.Count]))] }),
                ],
            },
        };
    }).Where(one => !one.Farm.Sheets.IsEmpty);

    [Fact]
    public void An_open_sheet_makes_nobody_usable_who_is_not_so_both_with_its_rows_done_and_without_them()
    {
        var held = 0;
        Each.Hold(
            WithSheetsThatMatter, Cases.Count / 4, one =>
            {
                var open = Usable(one);
                var without = Usable(one with { Farm = one.Farm with { Sheets = [] } });
                Interlocked.Add(ref held, without.Except(open).Count());
                return open.Except(without).FirstOrDefault() is { } let ? $"{let} may be used with the sheet open, and not without it"
                    : open.Except(Usable(Done(one))).FirstOrDefault() is { } other ? $"{other} may be used with the sheet open, and not with its rows done" : null;
            }, Show);
        (Drawn.Only is not null || held > 7).ShouldBeTrue($"a sheet mattered to {held}");
    }

    /// <summary>Every row done on the sheet's day: of a test the first of its answers, of a measure no result as yet.</summary>
    private static JudgingCase Done(JudgingCase one) => one with
    {
        Farm = one.Farm with
        {
            Sheets = [],
            Events =
            [
                .. one.Farm.Events,
                .. one.Farm.Sheets.SelectMany(sheet => sheet.Rows.Where(row => row.Animal != "nobody's").Select(row => (sheet.For, Row: row))).Distinct().Select(done => new EventRow(
                    LocalDatePattern.Iso.Format(done.For), done.Row.Animal, done.Row.Kind, Words.Vocabulary.FindKind(done.Row.Kind) switch { TestKind test => test.Answers[0], MeasureKind => "pending", _ => "" })
                { Details = [.. one.Farm.DetailNames.Select(_ => "")] }),
            ],
        },
    };

    [Fact]
    public void A_sheet_that_was_void_before_its_day_changes_no_answer() => Each.Hold(
        WithSheets, Math.Max(1, Cases.Count / 4), one =>
        {
            var sheet = one.Farm.Sheets[0];
            var emptied = one with
            {
                KnownOn = null,
                Farm = one.Farm with { Sheets = [sheet, new PlainSheet("H2", sheet.For, sheet.For.PlusDays(-1), sheet.Number, [])] },
            };
            return Usable(emptied).SetEquals(Usable(emptied with { Farm = one.Farm with { Sheets = [] } })) ? null : "answers differ";
        }, Show);

    private static HashSet<string> Usable(JudgingCase one)
    {
        var judge = new Judge(one.Rulebook, ParityDoubts.Laid(FarmHerd.Of(one)), one.KnownOn);
        return [.. one.Rulebook.Programme!.Choices.SelectMany(choice =>
        {
            var (animals, answers) = judge.Answers(choice, one.On);
            return animals.Where((_, i) => answers[i].MayBeUsed()).Select(animal => $"{choice.List} {judge.Herd.Numbers[animal]}");
        })];
    }

    private static JudgingCase With(JudgingCase one, int[] days, int[] written, (int Animal, int Kind)[][] rows, bool replaced, int later)
    {
        var known = one.Rulebook.Records!.UpTo!.Value;
        var numbers = one.Farm.Animals.Select(animal => animal.Number).ToList();
        ImmutableArray<PlainSheet> sheets =
        [
            .. days.Select((day, i) => new PlainSheet(
                $"H{i}", known.PlusDays(replaced ? days[0] : day), known.PlusDays((replaced ? days[0] : day) + written[i]), replaced && i > 0 ? $"H{i - 1}" : "",
                [.. rows[i].Select(row => (row.Animal < numbers.Count ? numbers[row.Animal] : "nobody's", Kinds[row.Kind % Kinds.Length]))])),
        ];
        return one with { Farm = one.Farm with { Sheets = sheets, Today = known.PlusDays(later) } };
    }

    private static JudgingCase Back(JudgingCase one, (int How, int Late, int Answer)[] back)
    {
        var rows = one.Farm.Sheets.SelectMany(sheet => sheet.Rows.Select((row, place) => (sheet, row, Named: $"{sheet.Number}:{place + 1}"))).Where(one => one.row.Animal != "nobody's").ToList();
        return one with
        {
            Farm = one.Farm with
            {
                Events =
                [
                    .. one.Farm.Events,
                    .. rows.Zip(back).Where(pair => pair.Second.How > 0 && pair.First.sheet.For.PlusDays(pair.Second.Late) <= one.Farm.Today).Select(pair =>
                    {
                        var ((sheet, row, named), (how, late, answer)) = pair;
                        var date = LocalDatePattern.Iso.Format(sheet.For.PlusDays(late));
                        var value = Words.Vocabulary.FindKind(row.Kind) switch { TestKind test => test.Answers[answer % test.Answers.Length], MeasureKind => "pending", _ => "" };
                        return (how == 1 ? new EventRow(date, row.Animal, row.Kind, value) : new EventRow(date, row.Animal, "not done", row.Kind)) with { SheetRow = named, Details = [.. one.Farm.DetailNames.Select(_ => "")] };
                    }),
                ],
            },
        };
    }

    private static string Show(JudgingCase one) => $"{one}\ntoday {one.Farm.Today}\n" + string.Join('\n', one.Farm.Sheets.Select(sheet => $"{sheet.Number} for {sheet.For} written {sheet.Written} replaces {sheet.Replaces}: {string.Join(' ', sheet.Rows)}"));
}
