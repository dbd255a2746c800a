using Byrelaw.Judging.Supposing;
using Byrelaw.Reporting.Promises;

namespace Byrelaw.Cli.Commands;

/// <summary><c>byrelaw records FOLDER --promises</c>: which promises would open how much.</summary>
internal static class PromisesWeighed
{
    /// <summary>Says it.</summary>
    /// <param name="rulebook">With the lists.</param>
    /// <param name="programme">The programme's file; null where none names these records.</param>
    /// <param name="folder">The records, on disk.</param>
    /// <param name="herdAsked">Which herd, where they hold several.</param>
    /// <param name="json">Whether a program reads it.</param>
    /// <param name="doors">Where they are.</param>
    /// <exception cref="CannotDoException">There is no list to weigh them by.</exception>
    public static int Say(Rulebook rulebook, string? programme, string folder, string? herdAsked, bool json, Doors doors)
    {
        if (rulebook.Programme is not { Choices.IsEmpty: false } of)
        {
            throw new CannotDoException(programme is null ? "--promises wants the programme whose lists are weighed: name it with --rules FILE" : $"{programme} draws up no list, so no promise opens anything");
        }

        var farm = new SupposedFarm(rulebook, FarmRecords.In(folder, doors.Show(folder), rulebook.Vocabulary, rulebook.Records, herdAsked));
        var gains = of.Choices.Select(choice => PromisesByGain.Find(farm, rulebook, choice)).ToList();
        var herd = farm.Herd(new Supposition());
        doors.Out.Write(json ? JsonText.Of(gains, herd) + "\n" : PromisesText.Of(gains, herd, doors.OutInk));
        return ExitCode.Done;
    }
}
