namespace Byrelaw.Records.Tests.Support;

/// <summary>A programme's file that is on no disk: <c>farm.byre</c>.</summary>
internal sealed class OneFile(string text) : IRuleFiles
{
    public string Resolve(string from, string relative) => relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => path == "farm.byre" ? Encoding.UTF8.GetBytes(text) : null;
}
