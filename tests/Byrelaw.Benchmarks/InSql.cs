using System.Diagnostics;
using DuckDB.NET.Data;

namespace Byrelaw.Benchmarks;

/// <summary>The other yardstick: the same twelve criteria as one question to a database engine, straight off the two files.</summary>
internal static class InSql
{
    private const string Question = """
        with a as (select animal, cast(born as date) born from read_csv('FOLDER/animals.csv', header = true, columns = {'animal': 'varchar', 'born': 'date', 'sex': 'varchar'})),
        e as (select date d, animal, kind, value from read_csv('FOLDER/events.csv', header = true, columns = {'date': 'date', 'animal': 'varchar', 'kind': 'varchar', 'value': 'varchar', 'unit': 'varchar', 'note': 'varchar', 'recorded': 'varchar'}) where date <= date 'KNOWN'),
        c as (select animal, max(d) calved from e where kind = 'calving' group by animal),
        s as (select a.animal, a.born, c.calved, coalesce(c.calved, a.born) since from a left join c using (animal)),
        f as (select s.animal,
            count(*) filter (kind = 'heat' and d >= since) heats,
            count(*) filter (kind = 'mastitis' and d >= date 'KNOWN' - 30) mastitis,
            count(*) filter (kind = 'metritis' and d >= date 'KNOWN' - 60) metritis,
            count(*) filter (kind = 'lameness' and d >= date 'KNOWN' - 30) lame,
            count(*) filter (kind = 'transfer' and d >= since) transfers,
            count(*) filter (kind = 'vaccination' and d between date 'KNOWN' - 365 and date 'KNOWN' - 28) vaccinated,
            count(*) filter (kind = 'mating' and d >= since) matings,
            arg_max(try_cast(value as double), d) filter (kind = 'body condition' and d >= date 'KNOWN' - 45) score,
            arg_max(value, d) filter (kind = 'BVD virus') virus,
            arg_max(value, d) filter (kind = 'uterine check') uterus,
            max(d) filter (kind = 'uterine check') looked
            from s left join e using (animal) group by s.animal)
        select count(*) from s join f using (animal) where date 'KNOWN' - born >= 400 and (calved is null or date 'KNOWN' - calved >= 56) and heats >= 1 and mastitis = 0 and metritis = 0 and lame = 0
            and transfers <= 2 and vaccinated >= 1 and score between 4 and 5.5 and virus = 'negative' and looked >= since + 21 and uterus = 'clean' and matings = 0
        """;

    /// <summary>Asks it.</summary>
    public static void Run(string folder)
    {
        var clock = Stopwatch.StartNew();
        using var connection = new DuckDBConnection("DataSource=:memory:");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = Question.Replace("FOLDER", folder, StringComparison.Ordinal).Replace("KNOWN", NodaTime.Text.LocalDatePattern.Iso.Format(MadeUpHerd.Known), StringComparison.Ordinal);
        var all = command.ExecuteScalar();
        using var self = Process.GetCurrentProcess();
        Console.WriteLine($"SQL: {all} meet all twelve after {clock.Elapsed.TotalSeconds:0.0} s, processor {self.TotalProcessorTime.TotalSeconds:0.0} s, at most {self.PeakWorkingSet64 >> 20} MiB");
    }
}
