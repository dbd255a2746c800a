namespace Byrelaw.Judging.Tests.LessInformation.Files;

/// <summary>A whole farm as it lies on disk: its programme with the base rules, and its two files of records.</summary>
/// <param name="Name">The programme's file, for messages.</param>
/// <param name="Rulebook">Rules, promises and lists.</param>
/// <param name="Records">The records as they stand.</param>
internal sealed record FarmOnFile(string Name, Rulebook Rulebook, RecordFiles Records)
{
    private readonly Lazy<Dictionary<(string List, string Animal), Answer>> _answers = new(() => Answers(Rulebook, Herd(Rulebook, Records)));

    /// <summary>Those whom other records let through although these do not, one in words each.</summary>
    /// <param name="less">The other records.</param>
    /// <param name="named">A doubt that says so itself: with it nobody is told.</param>
    public ImmutableArray<string> ComeThrough(RecordFiles less, Func<Doubted, bool>? named = null)
    {
        var herd = Herd(Rulebook, less);
        return named is not null && herd.Doubted.Any(named)
            ? []
            : [.. from said in Answers(Rulebook, herd) where Worth(said.Value) > Worth(_answers.Value.GetValueOrDefault(said.Key, Answer.No)) select $"{said.Key.Animal} of {said.Key.List}: {said.Value}"];
    }

    private static Herd Herd(Rulebook rulebook, RecordFiles records) =>
        Byrelaw.Judging.Promises.Believed.Of(rulebook, HerdReader.Read(records.AnimalBytes, records.EventBytes, rulebook.Vocabulary, rulebook.Records));

    /// <summary>Of two lines of one animal the better counts: somebody will read that one. Nor do zeros, spaces and unseen signs make two of one.</summary>
    /// <remarks>Answers alone, without what explains them: that takes ten times as long.</remarks>
    private static Dictionary<(string List, string Animal), Answer> Answers(Rulebook rulebook, Herd herd)
    {
        var (answers, judge) = (new Dictionary<(string List, string Animal), Answer>(), new Judge(rulebook, herd));
        foreach (var choice in rulebook.Programme!.Choices)
        {
            var (animals, said) = judge.Answers(choice);
            for (var i = 0; i < said.Length; i++)
            {
                var number = herd.Numbers[animals[i]].Replace(" ", "", StringComparison.Ordinal).Replace("\u200b", "", StringComparison.Ordinal).TrimStart('0');
                var place = (choice.List, number);
                if (!answers.TryGetValue(place, out var other) || Worth(said[i]) > Worth(other))
                {
                    answers[place] = said[i];
                }
            }
        }

        return answers;
    }

    private static int Worth(Answer answer) => answer switch { Answer.Ready => 2, Answer.OnCourse => 1, _ => 0 };
}
