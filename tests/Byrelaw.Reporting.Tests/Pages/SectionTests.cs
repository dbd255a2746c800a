using Byrelaw.Reporting.Documents;
using Byrelaw.Reporting.Pages;

namespace Byrelaw.Reporting.Tests.Pages;

/// <summary>What a list's page may never get wrong, whatever the answers: held over the document model, so that it holds of every writer.</summary>
public sealed class SectionTests
{
    private static readonly Draft Draft = InventedDraft.Make();

    private static readonly Gen<Draft> AnyAnswers = Gen.Select(Gen.Int[0, 4].Array[8], Gen.Int[0, 2].Array[8], (answers, dangers) => Draft with
    {
        Lists = [Draft.Lists[0] with { Animals = [.. Draft.Lists[0].Animals.Select((animal, i) => animal with { Answer = AnswerWords.All[answers[i]], InCalf = (InCalf)dangers[i] })] }],
    });

    [Fact]
    public void Every_animal_stands_in_exactly_one_section_and_the_sections_add_up_to_the_bar() => AnyAnswers.Hold(draft =>
    {
        var page = PageOf(draft);
        var rows = Blocks<ListRows>(page).SelectMany(list => list.Rows).ToList();
        rows.Select(row => row.Number).Order(StringComparer.Ordinal).ShouldBe(draft.Lists[0].Animals.Select(animal => animal.Number).Order(StringComparer.Ordinal));
        foreach (var share in Blocks<AnswerBar>(page).Single().Shares)
        {
            rows.Count(row => row.Answer == share.Answer).ShouldBe(share.Count);
            (share.Target is not null).ShouldBe(share.Count > 0);
        }

        return true;
    });

    [Fact]
    public void Danger_comes_from_the_floor_alone_and_whoever_has_it_stands_in_the_box_before_any_count() => AnyAnswers.Hold(draft =>
    {
        var page = PageOf(draft);
        var box = Blocks<Framed>(page).Single(framed => framed.Frame == Frame.Danger);
        page.Parts[0].Blocks.IndexOf(box).ShouldBeLessThan(page.Parts[0].Blocks.IndexOf(Blocks<AnswerBar>(page).Single()));
        foreach (var animal in draft.Lists[0].Animals)
        {
            Blocks<ListRows>(page).SelectMany(list => list.Rows).Single(row => row.Number == animal.Number).InCalf.ShouldBe(animal.InCalf);
            box.Sentences.Select(sentence => sentence.ToString().Split([' ', ',', '.']).Contains(animal.Number))
                .ShouldBe(box.Sentences.Select((_, line) => animal.InCalf == (line == 0 ? InCalf.TakeAsInCalf : InCalf.MayBe)));
        }

        var html = HtmlDocument.Of(page);
        (html.Split("class=\"danger\"").Length - 1).ShouldBe(Labels(draft, InCalf.TakeAsInCalf));
        (html.Split("class=\"maybe\"").Length - 1).ShouldBe(Labels(draft, InCalf.MayBe));
        return true;
    });

    [Fact]
    public void A_list_has_no_box_to_tick() => HtmlDocument.Of(PageOf(Draft)).ShouldNotContain("class=\"tick\"");

    [Fact]
    public void A_row_takes_no_more_than_its_share_of_a_page()
    {
        var rows = HtmlTree.Parse(HtmlDocument.Of(PageOf(Draft))).Descendants("li").Where(li => li.Attribute("class")?.Value == "row").ToList();
        rows.Count.ShouldBe(8);
        rows.Average(row => System.Text.Encoding.UTF8.GetByteCount(row.ToString(System.Xml.Linq.SaveOptions.DisableFormatting))).ShouldBeLessThan(650);
    }

    [Fact]
    public void Two_animals_never_share_a_place_of_a_page() =>
        Gen.Select(Gen.Char[" -_.,/#%éA1"], Gen.Char[" -_.,/#%éA1"], Gen.Int[0, 3], Gen.String[Gen.Char["0123456789"], 1, 4])
            .Hold((one, other, at, number) => (one == other || Anchors.Of(number.Insert(at % number.Length, $"{one}")) != Anchors.Of(number.Insert(at % number.Length, $"{other}"))).ShouldBeTrue());

    /// <summary>One label before the list of numbers, and one on each row.</summary>
    private static int Labels(Draft draft, InCalf which) => draft.Lists[0].Animals.Count(animal => animal.InCalf == which) is > 0 and var count ? count + 1 : 0;

    private static Page PageOf(Draft draft) => ListPage.Of(new ListReport(draft, draft.Lists[0]), "recipients/index", number => $"../animals/{number}.md", []);

    private static IEnumerable<T> Blocks<T>(Page page) => page.Parts.SelectMany(part => part.Blocks).OfType<T>();
}
