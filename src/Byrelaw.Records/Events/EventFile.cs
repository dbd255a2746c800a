namespace Byrelaw.Records.Events;

/// <summary>Reads <c>events.csv</c> with several threads, each a block at a time.</summary>
internal static class EventFile
{
    /// <summary>Reads the heading; null where nothing in the file can be read.</summary>
    public static EventColumns? ReadHeading(LineBlocks blocks, string file, Vocabulary vocabulary, List<Diagnostic> problems)
    {
        if (HeadingLine.Take(blocks, file) is { } heading)
        {
            return EventColumns.Read(heading, vocabulary, problems);
        }

        problems.Add(HeadingProblems.Empty(file, "`date`, `animal` and `kind`"));
        return null;
    }

    /// <summary>Reads all rows; one stage for each thread.</summary>
    public static EventStage[] Read(LineBlocks blocks, EventReading reading, int threads)
    {
        var stages = new EventStage[threads];
        Parallel.For(0, threads, new ParallelOptions { MaxDegreeOfParallelism = threads }, thread =>
        {
            var reader = new EventReader(reading);
            var block = new LineBlock();
            while (blocks.TryNext(block))
            {
                reader.ReadBlock(block);
            }

            stages[thread] = reader.Stage;
        });
        return stages;
    }
}
