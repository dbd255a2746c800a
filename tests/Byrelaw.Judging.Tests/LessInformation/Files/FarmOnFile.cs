namespace Byrelaw.Judging.Tests.LessInformation.Files;

/// <summary>A whole farm as it lies on disk: its programme with the base rules, and its two files of records.</summary>
/// <param name="Name">The programme's file, for messages.</param>
/// <param name="Rulebook">Rules, promises and lists.</param>
/// <param name="Records">The records as they stand.</param>
internal sealed record FarmOnFile(string Name, Rulebook Rulebook, RecordFiles Records)
{
    private readonly Lazy<Dictionary<(string List, string Animal), Answer>> _answers = new(() => Answers(Judged(Rulebook, Records)));

    /// <summary>Those whom other records let through although these do not, one in words each.</summary>
    /// <param name="less">The other records.</param>
    /// <param name="named">A doubt that says so itself: with it nobody is told.</param>
    public ImmutableArray<string> ComeThrough(RecordFiles less, Func<Doubted, bool>? named = null)
    {
        var draft = Judged(Rulebook, less);
        return named is not null && draft.Herd.Doubted.Any(named)
            ? []
            : [.. from said in Answers(draft) where Worth(said.Value) > Worth(_answers.Value.GetValueOrDefault(said.Key, Answer.No)) select $"{said.Key.Animal} of {said.Key.List}: {said.Value}"];
    }

    private static Draft Judged(Rulebook rulebook, RecordFiles records)
    {
        var herd = HerdReader.Read(records.AnimalBytes, records.EventBytes, rulebook.Vocabulary, rulebook.Records);
        return new Judge(rulebook, Byrelaw.Judging.Promises.Believed.Of(rulebook, herd)).JudgeAll();
    }

    /// <summary>Of two lines of one animal the better counts: somebody will read that one. Nor do zeros, spaces and unseen signs make two of one.</summary>
    private static Dictionary<(string List, string Animal), Answer> Answers(Draft draft)
    {
        var answers = new Dictionary<(string List, string Animal), Answer>();
        foreach (var list in draft.Lists)
        {
            foreach (var animal in list.Animals)
            {
                var place = (list.Choice.List, animal.Number.Replace(" ", "", StringComparison.Ordinal).Replace("\u200b", "", StringComparison.Ordinal).TrimStart('0'));
                if (!answers.TryGetValue(place, out var other) || Worth(animal.Answer) > Worth(other))
                {
                    answers[place] = animal.Answer;
                }
            }
        }

        return answers;
    }

    private static int Worth(Answer answer) => answer switch { Answer.Ready => 2, Answer.OnCourse => 1, _ => 0 };
}
