using Byrelaw.Judging.Verdicts;
using Byrelaw.Language.Rulebooks;
using Byrelaw.Records.Herds;
using NodaTime;

namespace Byrelaw.Judging;

/// <summary>Judges herd records against a rulebook.</summary>
public sealed class Judge
{
    /// <summary>Prepares a rulebook (which must have a programme) and a herd for judging.</summary>
    /// <param name="rulebook">Its vocabulary must be the herd's.</param>
    /// <param name="herd">The records.</param>
    /// <param name="knownOn">Agreements after this day do not exist; the herd must have been read as known on it too.</param>
    public Judge(Rulebook rulebook, Herd herd, LocalDate? knownOn = null) => throw new NotImplementedException();

    /// <summary>Judges every animal of every list.</summary>
    /// <param name="on">Judge on this day instead of each list's own days.</param>
    /// <param name="progress">Told how many animals are done, of how many.</param>
    public Draft JudgeAll(LocalDate? on = null, IProgress<(int Done, int Of)>? progress = null) => throw new NotImplementedException();

    /// <summary>Judges one animal on one list, whether or not the list takes her.</summary>
    public AnimalJudgement JudgeOne(Choice choice, int animal, LocalDate? on = null) => throw new NotImplementedException();
}
