namespace Byrelaw.Records.Tests.Support;

/// <summary>The words of a made-up farm whose herd is written in many forms.</summary>
internal static class MadeUpFarm
{
    /// <summary>As a farm's file declares them.</summary>
    public const string Words = """
        event heat
        event mating  with method is one of natural, inseminated, with sire is text
        measure weight  in kg
        measure body condition  on scale 1 to 10
        test BVD virus  answers positive, negative
        fact official identity  is identity
        fact breed  is one of Friesian, Jersey
        fact mature weight  in kg

        """;
}
