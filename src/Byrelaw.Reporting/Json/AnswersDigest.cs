using System.Security.Cryptography;

namespace Byrelaw.Reporting.Json;

/// <summary>Tells the answers of two drafts apart, whoever printed them.</summary>
public static class AnswersDigest
{
    /// <summary>The digest of what is said of one animal; null for none.</summary>
    public static string? Of(AnimalJson? animal) => animal is null ? null
        : "sha256:" + Convert.ToHexStringLower(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(animal, JsonShapes.OneLine.AnimalJson)));

    /// <summary>
    /// <c>sha256:</c> and the digest over, for each list, a line with its name and days, and for each animal a line with
    /// what <c>draft.json</c> says of her, as JSON without spaces.
    /// </summary>
    public static string Of(IEnumerable<ListJson> lists)
    {
        ArgumentNullException.ThrowIfNull(lists);
        using var digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var list in lists)
        {
            digest.AppendData(Encoding.UTF8.GetBytes($"{list.List} {list.JudgedFrom} {list.JudgedTo}\n"));
            foreach (var animal in list.Animals)
            {
                digest.AppendData(JsonSerializer.SerializeToUtf8Bytes(animal, JsonShapes.OneLine.AnimalJson));
                digest.AppendData("\n"u8);
            }
        }

        return "sha256:" + Convert.ToHexStringLower(digest.GetCurrentHash());
    }
}
