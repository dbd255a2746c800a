using Byrelaw.Reporting.Terminal;

namespace Byrelaw.Reporting.Tests.Terminal;

public sealed class WhyTextTests
{
    [Theory]
    [InlineData("1007")]
    [InlineData("1012")]
    [InlineData("1019")]
    [InlineData("1031")]
    [InlineData("1033")]
    [InlineData("1040")]
    [InlineData("1055")]
    [InlineData("1423")]
    public void Every_answer_is_explained_as_approved(string number) =>
        Snapshot.Verify(WhyText.Of(InventedDraft.Animal(InventedDraft.Make(), number), all: false, Ink.Plain), number);

    [Fact]
    public void All_shows_every_rule() => Snapshot.Verify(WhyText.Of(InventedDraft.Animal(InventedDraft.Make(), "1423"), all: true, Ink.Plain));

    [Fact]
    public void A_draft_is_summed_up_as_approved() => Snapshot.Verify(DraftText.Of(InventedDraft.Make(), Ink.Plain));

    [Fact]
    public void Records_are_summed_up_as_approved() => Snapshot.Verify(RecordsText.Of(InventedDraft.Make().Herd, Ink.Plain));

    [Fact]
    public void Text_from_files_cannot_steer_the_terminal()
    {
        var draft = InventedDraft.Make(text => text + "\u001b[2J\u0007\r");
        var report = new AnimalReport(new ListReport(draft, draft.Lists[0]), draft.Lists[0].Animals[0]);
        var texts = WhyText.Of(report, all: true, Ink.Plain) + DraftText.Of(draft, Ink.Plain) + RecordsText.Of(draft.Herd, Ink.Plain);
        texts.ShouldAllBe(c => c == '\n' || !char.IsControl(c));
    }

    [Fact]
    public void Colour_only_adds_to_words_that_stand_without_it()
    {
        var report = InventedDraft.Animal(InventedDraft.Make(), "1423");
        var coloured = WhyText.Of(report, all: true, new Ink(IsColoured: true));
        System.Text.RegularExpressions.Regex.Replace(coloured, "\u001b\\[[0-9]+m", "").ShouldBe(WhyText.Of(report, all: true, Ink.Plain));
        coloured.ShouldContain("\u001b[1m");
    }
}
