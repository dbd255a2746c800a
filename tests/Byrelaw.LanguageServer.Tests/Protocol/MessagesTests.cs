namespace Byrelaw.LanguageServer.Tests.Protocol;

/// <summary>What no library would send: bytes straight into the server, and everything that it answers.</summary>
public sealed class MessagesTests
{
    private const string Initialize = """{"jsonrpc":"2.0","id":1,"method":"initialize","params":{"capabilities":{}}}""";
    private const string Shutdown = """{"jsonrpc":"2.0","id":99,"method":"shutdown"}""";
    private const string Exit = """{"jsonrpc":"2.0","method":"exit"}""";

    [Fact]
    public void A_proper_end_is_0_and_any_other_is_1()
    {
        Serve(Message(Initialize), Message(Shutdown), Message(Exit)).Code.ShouldBe(0);
        Serve(Message(Initialize), Message(Exit)).Code.ShouldBe(1);
        Serve(Message(Initialize)).Code.ShouldBe(1);
        Serve().Code.ShouldBe(1);
    }

    [Theory]
    [InlineData("not json at all", -32700)]
    [InlineData("[]", -32600)]
    [InlineData("{}", -32600)]
    [InlineData("""{"jsonrpc":"2.0","id":7,"method":"textDocument/moonPhase","params":{}}""", -32601)]
    [InlineData("""{"jsonrpc":"2.0","id":7,"method":"textDocument/hover"}""", -32602)]
    [InlineData("""{"jsonrpc":"2.0","id":7,"method":"textDocument/hover","params":[1]}""", -32602)]
    [InlineData("""{"jsonrpc":"2.0","id":7,"method":"textDocument/hover","params":{"position":{"line":"x"}}}""", -32602)]
    public void A_message_that_means_nothing_is_refused_and_the_next_is_answered(string message, int code)
    {
        var served = Serve(Message(Initialize), Message(message), Message(Shutdown), Message(Exit));
        served.Code.ShouldBe(0);
        served.Answers.ShouldContain(answer => answer.Contains($"\"code\":{code}", StringComparison.Ordinal));
        served.Answers.ShouldContain("""{"jsonrpc":"2.0","id":99,"result":null}""");
        served.Log.ShouldNotContain("   at ");
    }

    [Theory]
    [InlineData("""{"jsonrpc":"2.0","method":"textDocument/didChange","params":{"textDocument":{"uri":"file:///nowhere.byre","version":2},"contentChanges":[]}}""")]
    [InlineData("""{"jsonrpc":"2.0","method":"textDocument/didOpen","params":null}""")]
    [InlineData("""{"jsonrpc":"2.0","method":"textDocument/hover","params":{"textDocument":{"uri":"file:///a.byre"},"position":{"line":0,"character":0}}}""")]
    [InlineData("""{"jsonrpc":"2.0","method":"unheard/of"}""")]
    [InlineData("""{"jsonrpc":"2.0","id":12,"result":{}}""")]
    [InlineData("""{"jsonrpc":"2.0","method":"$/cancelRequest","params":{"id":4711}}""")]
    [InlineData("""{"jsonrpc":"2.0","method":"$/cancelRequest"}""")]
    public void What_is_told_and_makes_no_sense_is_passed_over(string message)
    {
        var served = Serve(Message(Initialize), Message(message), Message(Shutdown), Message(Exit));
        served.Code.ShouldBe(0);
        served.Answers.Count.ShouldBe(2);
        served.Log.ShouldNotContain("   at ");
    }

    [Fact]
    public void Headers_without_a_length_and_noise_are_passed_over()
    {
        var served = Serve("hello\r\n\r\n", "Content-Length: nine\r\n\r\n", "Content-Length: -1\r\n\r\n", new string('x', 20_000) + "\r\n\r\n", Message(Initialize), Message(Shutdown), Message(Exit));
        served.Code.ShouldBe(0);
        served.Answers.Count.ShouldBe(2);
        served.Log.Split('\n').Count(line => line.Contains("passed over", StringComparison.Ordinal)).ShouldBe(4);
    }

    [Fact]
    public void A_message_that_breaks_off_ends_the_server_quietly()
    {
        var served = Serve(Message(Initialize), "Content-Length: 500\r\n\r\n{\"jsonrpc\":");
        served.Code.ShouldBe(1);
        served.Log.ShouldBe("");
    }

    [Fact]
    public void Nothing_is_answered_before_the_first_request_and_after_the_last()
    {
        var served = Serve(Message(Asked(3)), Message(Initialize), Message(Shutdown), Message(Asked(4)), Message(Exit));
        served.Answers[0].ShouldContain("\"code\":-32002");
        served.Answers[3].ShouldContain("\"code\":-32600");
    }

    [Fact]
    public void A_request_that_is_cancelled_while_it_waits_is_answered_as_cancelled()
    {
        // All of it is there before the server starts, so the request still waits when the wish to cancel it is read.
        var open = JsonSerializer.Serialize(new { jsonrpc = "2.0", method = "textDocument/didOpen", @params = new { textDocument = new { uri = "file:///big.byre", version = 1, text = Support.ThousandRules.Text } } });
        var asked = Enumerable.Range(10, 20).Select(id => Message($$$$"""{"jsonrpc":"2.0","id":{{{{id}}}},"method":"textDocument/semanticTokens/full","params":{"textDocument":{"uri":"file:///big.byre"}}}"""));
        var served = Serve([Message(Initialize), Message(open), .. asked, Message("""{"jsonrpc":"2.0","method":"$/cancelRequest","params":{"id":29}}"""), Message(Shutdown), Message(Exit)]);
        served.Code.ShouldBe(0);
        served.Answers.Single(answer => answer.Contains("\"id\":29,", StringComparison.Ordinal)).ShouldContain("\"code\":-32800");
    }

    private static string Asked(int id, string uri = "file:///a.byre") =>
        $$$$"""{"jsonrpc":"2.0","id":{{{{id}}}},"method":"textDocument/hover","params":{"textDocument":{"uri":"{{{{uri}}}}"},"position":{"line":5,"character":5}}}""";

    private static string Message(string body) => $"Content-Length: {Encoding.UTF8.GetByteCount(body)}\r\n\r\n{body}";

    private static (int Code, List<string> Answers, string Log) Serve(params string[] messages)
    {
        using var input = new MemoryStream(Encoding.UTF8.GetBytes(string.Concat(messages)));
        using var output = new MemoryStream();
        using var log = new StringWriter();
        var code = LanguageServerProgram.Run(input, output, log);
        var answers = Encoding.UTF8.GetString(output.ToArray()).Split("Content-Length: ", StringSplitOptions.RemoveEmptyEntries);
        return (code, [.. answers.Select(answer => answer[(answer.IndexOf("\r\n\r\n", StringComparison.Ordinal) + 4)..])], log.ToString());
    }
}
