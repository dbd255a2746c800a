namespace Byrelaw.Planning.Tests.Seasons;

/// <summary>The shared rule files' methods and assumptions, as they stand.</summary>
public sealed class BaseFilesTests
{
    private static readonly PlanStatements Base = new()
    {
        Methods = Read("methods.byre").Methods,
        Assumptions = Read("assumptions.byre").Assumptions,
    };

    [Theory]
    [InlineData(EmbryoOrigin.CollectedEggs)]
    [InlineData(EmbryoOrigin.Flushed)]
    [InlineData(EmbryoOrigin.Frozen)]
    public void The_base_assumptions_make_a_whole_chain(EmbryoOrigin origin)
    {
        var reading = ChainReading.Of(Base, new Aims { Embryos = origin }, CarrierShares.Exactly(0.3));

        reading.Missing.ShouldBeEmpty();
        reading.Chain!.AfterTransfer.Select(step => step.To).ShouldBe([Stage.Pregnant, Stage.Calvings, Stage.Alive, Stage.Heifers]);
    }

    [Fact]
    public void One_prostaglandin_comes_to_less_than_the_65_in_a_hundred_of_common_practice()
    {
        var chain = UseChain.OfTreatment(Base.Method("Prostaglandin once")!, _ => true);

        // "About 65% usable" (common practice, no source) counts cows in heat and seen; that all of them are accepted is taken for granted.
        (chain.Losses[0].Kept.Share * chain.Losses[2].Kept.Share).ShouldBe(0.65, 0.06);
        chain.Used.Share.ShouldBe(0.7 * 0.85 * 0.9, 1e-9);
    }

    [Fact]
    public void A_timed_insert_has_75_to_85_in_a_hundred_accepted()
    {
        // 75 to 85% with a suitable corpus luteum after timed programmes without heat watch: review of recipient programmes in Brazil 2019.
        UseChain.OfTreatment(Base.Method("Progesterone insert")!, day => day == 9).Used.Share.ShouldBeInRange(0.75, 0.85);
    }

    [Fact]
    public void Every_base_method_for_recipients_has_some_accepted_and_some_not()
    {
        foreach (var method in Base.Methods.Where(method => !method.IsForDonors))
        {
            var chain = method.IsNatural ? UseChain.OfNaturalHeat(method, 4, null) : UseChain.OfTreatment(method, _ => true);

            chain.Losses.ShouldNotBeEmpty(method.Name);
            chain.Used.Share.ShouldBeInRange(0.05, 0.95, method.Name);
            chain.Used.IsExact.ShouldBeFalse(method.Name);
        }
    }

    private static PlanStatements Read(string file) => RulebookReader.Read(Repository.At("rulesets/" + file), new BaseFiles())!.Rulebook.Plans;

    private sealed class BaseFiles : IRuleFiles
    {
        public string Resolve(string from, string relative) => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(from)!, relative));

        public string Show(string path) => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/');

        public byte[]? Read(string path) => File.Exists(path) ? File.ReadAllBytes(path) : null;
    }
}
