using Byrelaw.Language.Binding.Examples;
using Byrelaw.Language.Binding.Farm;
using Byrelaw.Language.Binding.Words;

namespace Byrelaw.Language.Reading;

/// <summary>Reads a rule file and all it uses into one resolved rulebook.</summary>
public static class RulebookReader
{
    /// <summary>Reads, binds and resolves. Whatever the bytes are, the result says what is wrong with them; nothing is thrown.</summary>
    /// <param name="path">The programme's file, or a rule file on its own.</param>
    /// <param name="files">Where files come from.</param>
    /// <param name="knownOn">Agreements after this day do not exist; null for those of today.</param>
    /// <param name="today">What day it is: agreements after it are not in force, and no records reach further. Null where nobody says: all are.</param>
    /// <returns>Null where there is no such file.</returns>
    public static RulebookReading? Read(string path, IRuleFiles files, LocalDate? knownOn = null, LocalDate? today = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(files);
        if (FileLoader.Load(path, files) is not { } loaded)
        {
            return null;
        }

        var phrases = new PhraseBook();
        foreach (var line in loaded.Files.SelectMany(file => file.Lines))
        {
            phrases.Learn(line);
        }

        foreach (var file in loaded.Files)
        {
            file.Blocks = BlockReader.Read(file.Lines, phrases, file.Problems);
        }

        var names = new Namespace();
        var rulebook = Bind(loaded, names, knownOn ?? today, today);
        if (knownOn is null && today is { } now)
        {
            AgreementsToCome.Check(loaded.Files, now);
        }

        return new RulebookReading(rulebook, [.. loaded.Files.SelectMany(file => file.Problems.OrderBy(problem => problem.Line).ThenBy(problem => problem.Column))])
        {
            Parts = new ReadParts(loaded.Files, phrases, names),
            UsedWithExamples = loaded.UsedWithExamples(),
            Asked = new ReadAsked(path, files, knownOn, today),
        };
    }

    private static Rulebook Bind(FileLoader loaded, Namespace names, LocalDate? knownOn, LocalDate? today)
    {
        var (files, root) = (loaded.UsedFirst, loaded.Files[0]);
        var farm = FarmBlocks.Find(files);
        var vocabulary = VocabularyBinder.Bind(files, names);
        names.Filtered.StartAfter(vocabulary);
        var visits = VisitsBinder.Bind(files, names);
        var holidays = AimsBinder.Holidays(root, farm.Programme);
        var dates = ProgrammeDates.Declare(root, farm.Programme, names, visits, holidays);
        var defines = DefineBinder.Declare(files, names);
        AmbiguousAnswers.Check(names, files);
        defines = DefineBinder.Bind(defines, names);
        var ownDefines = defines.Count;
        (var floor, defines) = FloorBinder.Bind(names, vocabulary.Kinds, defines);

        var rules = new RuleBinder(names, defines);
        rules.Broken.AddRange(loaded.Broken);
        foreach (var file in files)
        {
            rules.Bind(file, knownOn);
        }

        UnseenValues.Doubt(files, vocabulary, defines, rules.Entries);
        var expectations = RecordExpectationBinder.Bind(files, names);
        var layers = new LayerResolver(rules, names, defines, knownOn) { Expectations = new ExpectationChanges(expectations, knownOn) };
        layers.Apply(files);

        var acceptances = AcceptanceBinder.Bind(files, rules, names, knownOn);

        var context = new Context(names, root.Problems);
        var plans = new PlanBinder(names, rules, defines).Bind(files, visits);
        var aims = farm.Programme is { } wanted ? new AimsBinder(context, wanted).Bind(dates.Collections, holidays, plans) : null;
        if (aims is not null)
        {
            dates.ReckonFirstTreatment(aims, plans);
        }

        plans = plans with
        {
            Done = new DoneBinder(plans, aims?.Sessions ?? 1, knownOn).Bind(files),
            Stopped = new StoppedBinder(aims?.Sessions ?? 1, knownOn).Bind(files),
            Yardsticks = new YardstickBinder(names, plans).Bind(files),
        };
        var programme = farm.Programme is { } block ? new ProgrammeBinder(context, rules, block, isFloorLaid: !floor.IsEmpty).Bind(dates, aims!) : null;
        var records = farm.Records is { } keeping ? RecordsBinder.Bind(context, keeping, farm.Sources, knownOn, today) : null;
        if (programme is not null)
        {
            WaiversInTime.Check(programme, layers.Waivers, rules, root.Problems);
            DatesInRules.Check(programme, rules.Entries, defines, root.Problems);
            UnchosenRules.Check(programme, farm.Programme!, files, rules);
        }

        Currencies.Check(aims, plans, programme?.Span, files);
        foreach (var task in plans.Tasks)
        {
            TaskBinder.CheckDays(task, programme, rules.Entries.Select(entry => entry.Rule).OfType<Rule>(), PlanBinder.ProblemsOf(files, task.Span));
        }

        return SafetyRules.Held(UnseenValues.Doubt(files, new Rulebook
        {
            Vocabulary = names.Filtered.With(vocabulary),
            Defines = [.. defines.Select(entry => new Define(entry.Name, entry.Condition!, entry.IsBroken, entry.Span) { IsOfTheFloor = entry.Index >= ownDefines })],
            Floor = floor,
            Rules = [.. rules.Entries.Where(entry => entry.Drop is null).Select(entry => entry.Rule).OfType<Rule>()],
            Prefers = [.. rules.Entries.Select(entry => entry.Prefer).OfType<Prefer>()],
            Drops = [.. rules.Entries.Select(entry => entry.Drop).OfType<Drop>()],
            Waivers = [.. layers.Waivers],
            Expectations = [.. layers.Expectations.All],
            ExpectationWaivers = [.. layers.ExpectationWaivers],
            Acceptances = [.. acceptances],
            BrokenParts = [.. rules.Broken],
            Programme = programme,
            Plans = plans,
            Records = records,
            Examples = ExampleBinder.Bind(root, names, rules),
            Files = [.. loaded.Files.Select(file => file.Source)],
        }), loaded.Files);
    }
}
