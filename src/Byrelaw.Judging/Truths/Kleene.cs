namespace Byrelaw.Judging.Truths;

/// <summary>
/// Two truths worked out side by side: one with days after the known day taken as days on which
/// nothing more happens, and a strict one with coverage stopping at the known day. Where they
/// differ, the answer is expected rather than known.
/// </summary>
/// <remarks>
/// Each truth is two bits, "can be true" and "can be false" (both set: unknown), so that Kleene's
/// connectives are a few bit operations on both at once. Two more bits remember that an unknown
/// comes from something that is there and cannot be relied on, such as a sample whose result is not known: <c>if not known pass</c> must not
/// pass those.
/// </remarks>
internal readonly record struct Kleene(byte Bits)
{
    public static readonly Kleene True = new(0b00_0101);
    public static readonly Kleene False = new(0b00_1010);
    public static readonly Kleene Unknown = new(0b00_1111);

    private const int CanBeTrue = 0b00_0101;
    private const int CanBeFalse = 0b00_1010;
    private const int PendingAssumed = 0b01_0000;
    private const int PendingStrict = 0b10_0000;

    /// <summary>The truth with nothing happening after the known day.</summary>
    public Truth Assumed => ToTruth(Bits & 0b11);

    /// <summary>The truth with coverage stopping at the known day.</summary>
    public Truth Strict => ToTruth((Bits >> 2) & 0b11);

    public bool IsTrue => (Bits & 0b11) == 0b01;

    public bool IsFalse => (Bits & 0b11) == 0b10;

    public bool IsExpected => (Bits & 0b11) != ((Bits >> 2) & 0b11);

    /// <summary>Whether both truths are True: an "or" need look no further.</summary>
    public bool IsSurelyTrue => (Bits & 0b1111) == True.Bits;

    /// <summary>Whether both truths are False: an "and" need look no further.</summary>
    public bool IsSurelyFalse => (Bits & 0b1111) == False.Bits;

    /// <summary>Whether an unknown among the two comes from a sample whose result is not known.</summary>
    public bool IsPending => (Bits & (PendingAssumed | PendingStrict)) != 0;

    public static Kleene Of(Truth both, bool pending = false) => Of(both, both, pending);

    public static Kleene Of(Truth assumed, Truth strict, bool pending = false) =>
        Normal(ToBits(assumed) | (ToBits(strict) << 2) | (pending ? PendingAssumed | PendingStrict : 0));

    public static Kleene operator &(Kleene a, Kleene b) =>
        Normal((a.Bits & b.Bits & CanBeTrue) | ((a.Bits | b.Bits) & (CanBeFalse | PendingAssumed | PendingStrict)));

    public static Kleene operator |(Kleene a, Kleene b) =>
        Normal(((a.Bits | b.Bits) & (CanBeTrue | PendingAssumed | PendingStrict)) | (a.Bits & b.Bits & CanBeFalse));

    public static Kleene operator !(Kleene a) =>
        new((byte)(((a.Bits & CanBeTrue) << 1) | ((a.Bits & CanBeFalse) >> 1) | (a.Bits & (PendingAssumed | PendingStrict))));

    /// <summary>The same, where an unknown may not pass if another's may not, each of the two truths by itself.</summary>
    public Kleene OrPending(Kleene other) => new((byte)(Bits | (other.Bits & (PendingAssumed | PendingStrict))));

    /// <summary>The same without what is said of unknowns that are none: equal answers have equal bits.</summary>
    public Kleene Normal() => Normal(Bits);

    /// <summary>The same, where an unknown may not pass.</summary>
    public Kleene Barred() => Of(Assumed, Strict, pending: true);

    /// <summary>Puts True in the place of each unknown that does not come from a sample with an unknown result.</summary>
    public Kleene Pass()
    {
        int bits = Bits;
        bits = (bits & (PendingAssumed | 0b0011)) == 0b0011 ? bits & ~0b0010 : bits;
        bits = (bits & (PendingStrict | 0b1100)) == 0b1100 ? bits & ~0b1000 : bits;
        return new((byte)bits);
    }

    /// <summary>Puts False in the place of each unknown.</summary>
    public Kleene Exclude()
    {
        var bits = Bits & 0b1111;
        bits = (bits & 0b0011) == 0b0011 ? bits & ~0b0001 : bits;
        bits = (bits & 0b1100) == 0b1100 ? bits & ~0b0100 : bits;
        return new((byte)bits);
    }

    /// <summary>Keeps "pending" only beside an unknown, so that equal answers have equal bits.</summary>
    private static Kleene Normal(int bits)
    {
        if ((bits & 0b0011) != 0b0011)
        {
            bits &= ~PendingAssumed;
        }

        if ((bits & 0b1100) != 0b1100)
        {
            bits &= ~PendingStrict;
        }

        return new((byte)bits);
    }

    // False, Unknown, True are 0, 1, 2; their bits 10, 11, 01.
    private static int ToBits(Truth truth) => (0b01_11_10 >> ((int)truth * 2)) & 0b11;

    private static Truth ToTruth(int bits) => (Truth)((0b01_00_10_00 >> (bits * 2)) & 0b11);
}
