using Byrelaw.Benchmarks;

switch (args)
{
    case ["many", ..]:
        ManyAnimals.Run(args.Length > 1 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 1_000_000);
        break;
    case ["write", var folder, var count]:
        MadeUpFiles.Write(folder, int.Parse(count, System.Globalization.CultureInfo.InvariantCulture));
        break;
    case ["loop", var folder]:
        PlainLoop.Run(folder);
        break;
    case ["sql", var folder]:
        InSql.Run(folder);
        break;
    case ["judge", var folder]:
        ManyAnimals.Judged(folder);
        break;
    case ["season", var donors]:
        var season = new SeasonBenchmarks { Donors = int.Parse(donors, System.Globalization.CultureInfo.InvariantCulture) };
        season.SetUp();
        var clock = System.Diagnostics.Stopwatch.StartNew();
        season.Numbers();
        Console.WriteLine($"The numbers of a season with {donors} donors: {clock.Elapsed.TotalSeconds:0.00} s");
        break;
    default:
        BenchmarkDotNet.Running.BenchmarkSwitcher.FromAssembly(typeof(MadeUpHerd).Assembly).Run(args);
        break;
}
