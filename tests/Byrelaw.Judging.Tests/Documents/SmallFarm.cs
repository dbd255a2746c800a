namespace Byrelaw.Judging.Tests.Documents;

/// <summary>
/// Judges the farm that a page's blocks make up: one <c>byre</c> file, <c>csv animals</c> and <c>csv events</c>; a later block
/// of a kind takes the place of the earlier one, and <c>byre change</c> that of the <c>records</c> block alone.
/// </summary>
internal sealed class SmallFarm : IRuleFiles
{
    private const string Records = "records \"records\"";

    private string _rules = "";
    private string _animals = "";
    private string _events = "";

    /// <summary>How many times the farm was judged.</summary>
    public int Judged { get; private set; }

    public string? Outcome(Fence fence)
    {
        switch (fence.Language, fence.Rest)
        {
            case ("byre", "change"):
                var from = _rules.IndexOf(Records, StringComparison.Ordinal);
                var to = _rules.IndexOf("\n\n", from, StringComparison.Ordinal);
                _rules = _rules[..from] + fence.Text.TrimEnd('\n') + _rules[to..];
                return null;
            case ("byre", _):
                _rules = fence.Text;
                return null;
            case ("csv", "animals"):
                _animals = fence.Text;
                return null;
            case ("csv", "events"):
                _events = fence.Text;
                return null;
            case ("answers", _):
                return Judge();
            default:
                return null;
        }
    }

    public string Resolve(string from, string relative) => relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => Encoding.UTF8.GetBytes(_rules);

    private string Judge()
    {
        Judged++;
        var reading = RulebookReader.Read("farm.byre", this)!;
        reading.Problems.ShouldBeEmpty();
        var herd = HerdReader.Read(
            Encoding.UTF8.GetBytes(_animals), Encoding.UTF8.GetBytes(_events), reading.Rulebook.Vocabulary, reading.Rulebook.Records);
        return AnswersText.Of(new Judge(reading.Rulebook, herd).JudgeAll());
    }
}
