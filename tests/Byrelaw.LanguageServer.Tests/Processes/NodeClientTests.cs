using System.ComponentModel;
using System.Diagnostics;

namespace Byrelaw.LanguageServer.Tests.Processes;

public sealed class NodeClientTests
{
    private const string Folder = "tests/Byrelaw.LanguageServer.Tests/NodeClient";

    [Fact]
    public async Task The_protocol_library_of_editors_is_served_by_the_program_itself()
    {
        Assert.SkipUnless(Directory.Exists(Repository.At($"{Folder}/node_modules")), $"the client is not installed: run `npm ci` in {Folder}");
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        using var node = Start("node", Repository.At($"{Folder}/client.js"), folder.Path, "dotnet", Path.Combine(AppContext.BaseDirectory, "byrelaw.dll"), "language-server", "--stdio");
        var (said, wrong) = (node!.StandardOutput.ReadToEndAsync(), node.StandardError.ReadToEndAsync());
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(120));
        await node.WaitForExitAsync(patience.Token);

        (await wrong).ShouldBe("");
        Snapshot.Verify(await said);
        node.ExitCode.ShouldBe(0);
    }

    private static Process? Start(string program, params string[] arguments)
    {
        try
        {
            return Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true });
        }
        catch (Win32Exception)
        {
            Assert.Skip($"there is no {program} on this machine");
            return null;
        }
    }
}
