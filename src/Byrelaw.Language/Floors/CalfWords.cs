using System.Text.RegularExpressions;

namespace Byrelaw.Language.Floors;

/// <summary>
/// What answers and names of tests say about a calf: <c>PD+</c>, <c>in calf, not sure</c>, <c>not in calf</c>. Short lists say what clearly means "found none"; whatever else a test
/// about pregnancy answers is a calf or a doubt.
/// </summary>
internal static partial class CalfWords
{
    // Words that begin so speak of a calf inside wherever they stand. From memory: English, German, Dutch, French, Spanish, Portuguese, Scandinavian.
    private static readonly ImmutableArray<string> OfACalf =
    [
        "preg", "gravid", "gestat", "gestac", "gestant", "concei", "concep", "fetus", "foetus", "fetal", "foetal", "pd", "pspb", "incalf", "notincalf", "unpreg", "nonpreg",
        "trimest", "ballot", "springing", "springer", "tracht", "tragend", "dracht", "dragend", "pleine", "prenad", "prenh", "encinta", "drektig", "draktig", "dræktig", "drægtig",
    ];

    private static readonly ImmutableArray<string> OfACalfWhole = ["pag", "pags", "bpag"];

    /// <summary>What a test of the womb answers, and of other things too.</summary>
    private static readonly ImmutableArray<string> OfACalfOrElse = ["empty", "open", "barren", "mt", "pg", "carrying", "bred", "unbred", "springer", "springing", "leer", "leeg", "vide", "vacia", "vazia"];

    private static readonly ImmutableArray<string> ElseBefore = ["home", "well", "pure", "half", "cross", "farm"];

    /// <summary>What is empty or open beside a womb, or carried beside a calf.</summary>
    private static readonly ImmutableArray<string> OtherThings =
    [
        "rumen", "gut", "stomach", "abomasum", "cervix", "vulva", "teat", "udder", "quarter", "bag", "wound", "eye", "mouth", "foot", "feet", "leg", "hoof", "claw", "lame", "lameness",
        "gait", "locomotion", "mobility", "gate", "trough", "bottle", "navel", "abscess", "bladder", "nose",
    ];

    /// <summary>A test that is called nothing but these looks for a calf: <c>scan</c>, <c>vet scan 2</c>, <c>rectal</c>. One more word, as of <c>lung scan</c>, says otherwise.</summary>
    private static readonly ImmutableArray<string> Looking = ["scan", "rescan", "scans", "scanned", "scanning", "scanner", "ultrasound", "sonar", "echography", "palpation", "palpated", "rectal"];
    private static readonly ImmutableArray<string> BesideLooking =
        ["vet", "check", "test", "exam", "visit", "result", "early", "late", "first", "second", "final", "autumn", "spring", "summer", "winter", "whole", "herd", "cow", "cows", "heifer", "heifers", "by", "hand", "re", "follow", "up", "#"];

    /// <summary>What somebody finds who looks for something other than a calf there.</summary>
    private static readonly ImmutableArray<string> FoundElse =
        ["corpus", "luteum", "cl", "follicle", "follicles", "follicular", "luteal", "cyst", "cysts", "cystic", "quiet", "cycling", "static", "clean", "dirty", "discharge", "pus", "metritis", "endometritis", "normal"];

    private static readonly ImmutableArray<string> Calf = ["calf", "pregnant", "preg", "pregnancy", "gravid", "gestante", "carrying", "bred", "incalf", "trachtig", "tragend", "drachtig", "pleine", "prenada", "prenhe"];
    private static readonly ImmutableArray<string> Found = ["pregnant", "gravid", "gestante", "incalf", "trachtig", "tragend", "drachtig", "dragend", "pleine", "prenada", "prenhe", "conceived", "carrying"];
    private static readonly ImmutableArray<string> Samples = ["milk", "blood", "sample", "samples", "test", "tests", "result", "lab", "laboratory", "#"];
    private static readonly ImmutableArray<string> OfOne = ["calf", "calves", "twins", "heartbeat"];
    private static readonly ImmutableArray<string> Not = ["not", "no", "non", "neg", "negative", "negativ", "negatif", "nicht", "niet", "pas", "kein", "geen", "nao", "n"];
    private static readonly ImmutableArray<string> None =
        ["empty", "open", "barren", "none", "nothing", "mt", "unbred", "nonpregnant", "unpregnant", "notpregnant", "notincalf", "leer", "gust", "leeg", "vide", "vacia", "vazia"];
    private static readonly ImmutableArray<string> Denying = ["not", "no", "non", "nicht", "niet", "pas", "kein", "geen", "nao"];

    /// <summary>What people shorten "found none" to. As an answer of a test of one's own it would say too little.</summary>
    private static readonly ImmutableArray<string> NoneInShort = ["e", "o", "mt", "np", "nic", "nip"];

    /// <summary>What people shorten "found one" to.</summary>
    private static readonly ImmutableArray<string> OneInShort = ["p", "pg", "pr", "ic"];

    /// <summary>What is written where nobody looked.</summary>
    private static readonly ImmutableArray<string> NotDone = ["na", "nd", "n/a", "nil", "never", "unknown", "not done", "not tested", "not scanned", "not seen", "not presented", "absent", "no test", "no sample", "cancelled"];
    private const string Nothing = "-–—−_./\\|,;:'\"()☐✗✘×";
    private static readonly ImmutableArray<string> Looked = ["pd", "pag", "pspb", "scan", "test"];
    private static readonly ImmutableArray<string> Beside = ["in", "with", "a", "any", "found", "present"];
    private static readonly ImmutableArray<string> Unsure = ["unsure", "sure", "maybe", "perhaps", "possible", "possibly", "doubtful", "recheck", "rechk", "rc", "?"];
    private static readonly ImmutableArray<string> OfALiveCalf = ["calf", "calves", "heartbeat", "live", "alive", "due", "early", "late"];
    private static readonly ImmutableArray<string> Times = ["d", "day", "days", "w", "wk", "wks", "week", "weeks", "m", "mo", "mth", "mths", "month", "months"];
    private static readonly ImmutableArray<string> Positive = ["positive", "positiv", "positif", "positivo", "pos", "yes", "y", "+", "found", "heavy", "twin", "twins", "carrying", "bred"];

    /// <summary>Whether words speak of a calf inside a cow, found or not.</summary>
    public static bool Speak(string text)
    {
        var parts = Parts(text);
        return parts.Exists(word => OfACalfWhole.Contains(word) || OfACalf.Any(stem => word.StartsWith(stem, StringComparison.Ordinal)))
            || Enumerable.Range(0, Math.Max(0, parts.Count - 1)).Any(i =>
                (parts[i] is "in" && parts[i + 1] == "calf") || (parts[i] is "calf" or "calves" && parts[i + 1] is "count" or "number" or "seen") || (parts[i] is "far" && parts[i + 1] is "on" or "gone")
                || (parts[i] == "calf" && parts[i + 1] == "found")
                || (parts[i] is "with" && parts[i + 1] == "calf" && parts.ElementAtOrDefault(i + 2) != "at"));
    }

    /// <summary>Whether an answer does, where the test looks at no other thing that can be so.</summary>
    public static bool MaySpeak(string answer, string test)
    {
        var parts = Parts(answer);
        return !Parts(test).Exists(word => OtherThings.Contains(word) || OtherThings.Contains(word.TrimEnd('s')))
            && (parts.TrueForAll(word => OfOne.Contains(word)) || Enumerable.Range(0, parts.Count).Any(i => OfACalfOrElse.Contains(parts[i]) && !(i > 0 && ElseBefore.Contains(parts[i - 1]))));
    }

    /// <summary>Whether a test is called a sample of milk or of blood, and nobody says of what: it may be one for pregnancy.</summary>
    public static bool AreOnlyOfASample(string test) =>
        Parts(test) is var parts && parts.Exists(word => word is "milk" or "blood") && parts.TrueForAll(word => Samples.Contains(word) || BesideLooking.Contains(word));

    /// <summary>Whether a test is called after how one looks for a calf, and after nothing else.</summary>
    public static bool LookForACalf(string test) =>
        Parts(test) is var parts && parts.Exists(word => Looking.Contains(word)) && parts.TrueForAll(word => Looking.Contains(word) || BesideLooking.Contains(word));

    /// <summary>Whether an answer speaks of nothing but ovaries and the like.</summary>
    public static bool SpeakOfElse(string answer) => Parts(answer).TrueForAll(word => FoundElse.Contains(word));

    /// <summary>Whether an answer of a test about pregnancy says that there is one, if only by <c>+</c> or <c>not empty</c>.</summary>
    public static bool Affirm(string answer) => !FoundNone(answer) && (Speak(answer) || IsPositive(Parts(answer)));

    /// <summary>Whether a text of somebody else's file says so. What it is called that was looked for (<c>PD</c>, <c>preg check</c>) does not by itself.</summary>
    public static bool FoundACalf(string text) => !FoundNone(text) && Parts(text) is var parts && (IsPositive(parts) || parts.Exists(word => Found.Contains(word))
        || Enumerable.Range(0, Math.Max(0, parts.Count - 1)).Any(i => parts[i] is "in" or "with" && parts[i + 1] == "calf"));

    /// <summary>Whether another name for an answer clearly says that none was found: by a list that is whole, with what people shorten it to.</summary>
    public static bool FoundNoneInShort(string name) => FoundNone(name) || (Parts(name) is [var one] && NoneInShort.Contains(one));

    /// <summary>Whether a text is what people shorten "found one" to.</summary>
    public static bool FoundOneInShort(string text) => Parts(text) is [var one] && OneInShort.Contains(one);

    /// <summary>
    /// Whether a text of a column of results cannot mean that none was found, whoever wrote it: it is blank, speaks of a calf (<c>PREG</c>, <c>IC</c>, <c>live</c>), says how old one is, or that
    /// nobody is sure. Letters and numbers that say nothing by themselves are their sender's to mean.
    /// </summary>
    public static bool CannotMeanNone(string text)
    {
        var parts = Parts(text);
        return string.IsNullOrWhiteSpace(text) || FoundACalf(text) || FoundOneInShort(text) || (!FoundNone(text) && parts.Exists(word => Unsure.Contains(word)))
            || (!FoundNoneInShort(text) && !parts.Exists(word => None.Contains(word) || Not.Contains(word) || Looked.Contains(word) || Looking.Contains(word) || word is "check" or "exam" or "visit")
                && (Speak(text) || parts.Exists(word => OfALiveCalf.Contains(word)) || Enumerable.Range(0, Math.Max(0, parts.Count - 1)).Any(i => parts[i] == "#" && Times.Contains(parts[i + 1]))));
    }

    /// <summary>Whether a text says that somebody felt with a hand, if only by <c>H</c>.</summary>
    public static bool ByHand(string text) => Parts(text) is ["h"] || Parts(text).Exists(word => word is "hand" or "manual" or "rectal" || word.StartsWith("palp", StringComparison.Ordinal));

    /// <summary>Whether a text is what a scan is shortened to: that one was found, that none was, or that it is not known.</summary>
    public static bool IsShortOfAScan(string text) => FoundOneInShort(text) || FoundNoneInShort(text) || SayNothing(text) || Parts(text) is ["r" or "rc" or "recheck" or "?"];

    /// <summary>Whether a text says that nobody looked, or nothing at all: dashes and the like, and what is written instead of a result. A tick, a star or a question mark says something.</summary>
    public static bool SayNothing(string text) => NotDone.Contains(NameFolding.Fold(text).TrimEnd('.')) || text.All(sign => char.IsWhiteSpace(sign) || Nothing.Contains(sign));

    private static bool IsPositive(List<string> parts) => parts.Exists(word => Positive.Contains(word))
        || Enumerable.Range(0, Math.Max(0, parts.Count - 1)).Any(i => Denying.Contains(parts[i]) && None.Contains(parts[i + 1]));

    /// <summary>
    /// Whether an answer clearly says that no calf was found: <c>empty</c>, <c>not in calf</c>, <c>PD negative</c>, <c>no</c>. One word or sign more than is known here, such as that of
    /// <c>empty?</c> or <c>not sure</c>, and it does not.
    /// </summary>
    public static bool FoundNone(string answer)
    {
        var parts = Parts(answer);
        parts = parts[parts.TakeWhile(word => Looked.Contains(word)).Count()..];
        if (parts.Count > 1 && parts[^1] == ".")
        {
            parts.RemoveAt(parts.Count - 1);
        }

        if ((parts is [var one] && (one == "-" || Not.Contains(one))) || parts is ["-", "ve"])
        {
            return true;
        }

        parts.RemoveAll(word => Beside.Contains(word));
        return parts switch
        {
            [var first] => None.Contains(first),
            [var first, var second] => (Not.Contains(first) && Calf.Contains(second)) || (Calf.Contains(first) && Not.Contains(second)) || (None.Contains(first) && None.Contains(second)),
            _ => false,
        };
    }

    /// <summary>Words without accents, and signs, each a part of its own; a number is <c>#</c>, and a hyphen within a word parts two.</summary>
    private static List<string> Parts(string text)
    {
        var parts = new List<string>();
        var plain = DottedLetter().Replace(NameFolding.Fold(string.Concat(text.Select(InOneWidth))), "$1");
        foreach (Match part in Part().Matches(plain))
        {
            parts.Add(char.IsDigit(part.Value[0]) ? "#" : string.Concat(part.Value.Select(HintedWord.WithoutAccent)));
        }

        return parts;
    }

    /// <summary>Signs of an Asian keyboard are as wide as two.</summary>
    private static char InOneWidth(char sign) => sign is >= '\uFF01' and <= '\uFF5E' ? (char)(sign - 0xFEE0) : sign;

    [GeneratedRegex(@"(?<!\p{L})(\p{L})\.")]
    private static partial Regex DottedLetter();

    [GeneratedRegex(@"\p{L}+|\d+|(?<!\p{L})-|-(?!\p{L})|[^\p{L}\d\s_'-]")]
    private static partial Regex Part();
}
