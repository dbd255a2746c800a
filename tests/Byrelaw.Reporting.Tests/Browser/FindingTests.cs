using System.Text.Json;
using System.Text.RegularExpressions;

namespace Byrelaw.Reporting.Tests.Browser;

/// <summary>Finds animals on a list's page in a real browser: by number and by button, with the script and without it, on a telephone of 320 pixels.</summary>
public sealed partial class FindingTests : IDisposable
{
    // Runs in a page beside the report and drives the pages in frames as wide as a small telephone (WCAG 2.2, 1.4.10: no sideways scrolling at 320 pixels).
    private const string Driver =
        """
        <!DOCTYPE html><html><body>
        <iframe id="list" src="recipients/index.html" width="320" height="600"></iframe>
        <iframe id="plain" src="recipients/index.html" width="320" height="600" sandbox="allow-same-origin"></iframe>
        <iframe id="season" src="index.html" width="320" height="600"></iframe>
        <iframe id="rules" src="rules.html" width="320" height="600"></iframe>
        <iframe id="animal" src="animals/1423.html" width="320" height="600"></iframe>
        <pre id="result"></pre>
        <script>
        addEventListener('load', () => {
          const page = id => document.getElementById(id).contentDocument, list = page('list');
          const shown = of => [...of.querySelectorAll('.row')].filter(row => row.offsetHeight > 0).map(row => row.querySelector('b').textContent);
          const box = list.querySelector('.find input');
          const type = words => { box.value = words; box.dispatchEvent(new list.defaultView.Event('input', { bubbles: true })); };
          const press = value => list.querySelector('.chip[data-v="' + value + '"]').click();
          const result = { all: shown(list) };
          type('1012'); result.typed = shown(list); result.said = list.querySelector('.find output').textContent; result.cut = list.querySelector('.cut').textContent;
          result.danger = list.querySelector('.warn').offsetHeight > 0;
          type('999'); result.nobody = shown(list);
          type(''); press('ask'); result.asked = shown(list);
          press('no'); result.askedOrNo = shown(list);
          press('ask'); press('no'); result.back = shown(list);
          result.without = shown(page('plain')); result.finderWithout = page('plain').querySelector('.find').offsetHeight;
          result.wide = ['list', 'plain', 'season', 'rules', 'animal'].filter(id => page(id).documentElement.scrollWidth > 320);
          document.getElementById('result').textContent = JSON.stringify(result);
        });
        </script></body></html>
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("byrelaw-browser-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void An_animal_is_found_by_number_and_by_button_and_without_a_script_all_are_there()
    {
        Assert.SkipWhen(Chromium.Program is null, "there is no program `chromium` on this machine, so no page was tried in a browser");
        ReportFolder.Write(Path.Combine(_folder, "report"), Report.Of(InventedDraft.Make()));
        var driver = Path.Combine(_folder, "report", "driver.html");
        File.WriteAllText(driver, Driver);
        var result = JsonDocument.Parse(System.Net.WebUtility.HtmlDecode(Result().Match(Chromium.After(driver, Path.Combine(_folder, "profile"))).Groups[1].Value)).RootElement;

        Numbers("all").Count.ShouldBe(8);
        Numbers("typed").ShouldBe(["1012"]);
        result.GetProperty("said").GetString().ShouldBe("1 of 8");
        result.GetProperty("cut").GetString().ShouldBe("Not the whole list: 1 of 8 animals are shown.");
        result.GetProperty("danger").GetBoolean().ShouldBeTrue();
        Numbers("nobody").ShouldBeEmpty();
        Numbers("asked").ShouldBe(["1019"]);
        Numbers("askedOrNo").ShouldBe(["1019", "1033", "1040", "1055"]);
        Numbers("back").Count.ShouldBe(8);
        Numbers("without").Count.ShouldBe(8);
        result.GetProperty("finderWithout").GetInt32().ShouldBe(0);
        Numbers("wide").ShouldBeEmpty();

        List<string> Numbers(string name) => [.. result.GetProperty(name).EnumerateArray().Select(one => one.GetString()!)];
    }

    [GeneratedRegex("<pre id=\"result\">(.*?)</pre>")]
    private static partial Regex Result();
}
