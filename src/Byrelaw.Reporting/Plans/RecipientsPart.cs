using Byrelaw.Planning.Seasons;

namespace Byrelaw.Reporting.Plans;

/// <summary>How many recipients to get ready, by each method.</summary>
internal static class RecipientsPart
{
    public static Part Of(Plan plan)
    {
        var numbers = plan.Numbers;
        if (numbers.Methods.IsEmpty)
        {
            return Part.None;
        }

        var currency = numbers.Budget?.Currency ?? PlanHead.Aims(plan).Budget?.Currency ?? "";
        var table = new Table("By each method, at one session", "method", "of those treated or watched, used", "to treat", "each accepted one costs");
        foreach (var method in numbers.Methods)
        {
            table.Add(
                Wording.Bold(method.Option.Chain.Method), $"{ChanceWords.Rate(method.Option.Preparing.Used.Share)}: {Chain(method)}",
                ToTreat(method),
                method.Option.CostPerAccepted is { } cost ? MoneyWords.Of(cost, currency) : "not said");
        }

        return new DocumentBuilder().Heading(2, "Recipients: how many to get ready")
            .Sentence(Lead(plan))
            .Table(table)
            .Bullets(Notes(numbers))
            .As("recipients");
    }

    private static string Lead(Plan plan)
    {
        var list = plan.Recipients;
        var embryos = plan.Numbers.Methods[0].Enough?.Accepted;
        return (embryos is { } count ? $"At a session {Numbers.Count(count, "embryo is", "embryos are")} to be expected. “To treat” is the number of animals with which so many are accepted, {ChanceWords.Of(plan.Numbers.Certainty)} sure. " : "")
            + (list is null ? "No list of recipients is drawn up, so nobody is there to treat."
                : $"On the list: {list.Count(Answer.Ready)} Ready, {list.Count(Answer.OnCourse)} On course, {list.Count(Answer.Ask)} to ask about.");
    }

    private static string Chain(MethodNumbers method)
    {
        var natural = method.TakesWhoeverComes;
        var seen = method.Option.Chain.Losses.Any(loss => loss.Step == UseStep.Seen);
        return string.Join(", ", method.Option.Chain.Losses.Select(loss =>
        {
            var (step, of) = PlanWords.Of(loss.Step, natural, seen);
            return $"{step} {ChanceWords.Rate(loss.Kept.Share)} {of}";
        }));
    }

    private static string ToTreat(MethodNumbers method) => method.Enough switch
    {
        null => "no embryos to reckon with",
        { Animals: { } animals, IfRateIsExact: { } exact } => $"{animals}{(exact < animals ? $" ({exact}, were the share known exactly)" : "")}",
        var enough => $"not even {enough.Limit} are enough: {ChanceWords.Of(enough.Reached)} sure",
    };

    private static IEnumerable<string> Notes(SeasonNumbers numbers)
    {
        foreach (var (method, second) in numbers.Methods.Select(method => (method, method.Second)).Where(pair => pair.Second is not null))
        {
            yield return $"{method.Option.Chain.Method}: {ChanceWords.Of(second!.TreatedAgain.Share)} are not seen in heat by day {second.Chance.NotSeenBy}. Treated again on day {second.Chance.From} to {second.Chance.To}, "
                + $"another {ChanceWords.Of(second.UsedOfAll.Share)} of all may be used, for transfers {second.LaterFrom} to {second.LaterTo} days later.";
        }

        yield return "What is given, to whom and how is for a licensed vet to order, under the label and the law of the place. Check every animal's status on the day.";
    }
}
