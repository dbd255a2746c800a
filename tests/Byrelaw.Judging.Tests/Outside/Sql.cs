using Microsoft.Data.Sqlite;

namespace Byrelaw.Judging.Tests.Outside;

/// <summary>A database in memory, as the outside opinion.</summary>
internal sealed class Sql : IDisposable
{
    private readonly SqliteConnection _connection = new("Data Source=:memory:");

    public Sql() => _connection.Open();

    public void Run(string statement, params object?[] values)
    {
        using var command = Command(statement, values);
        command.ExecuteNonQuery();
    }

    /// <summary>One value: 0 is false, NULL is not known, anything else true.</summary>
    public Truth Truth(string query, params object?[] values)
    {
        using var command = Command(query, values);
        return command.ExecuteScalar() switch
        {
            null or DBNull => Truths.Truth.Unknown,
            long number => number == 0 ? Truths.Truth.False : Truths.Truth.True,
            var other => throw new InvalidOperationException($"{query} gave {other}"),
        };
    }

    public void Dispose() => _connection.Dispose();

    private SqliteCommand Command(string statement, object?[] values)
    {
        var command = _connection.CreateCommand();
        command.CommandText = statement;
        for (var i = 0; i < values.Length; i++)
        {
            command.Parameters.AddWithValue($"@{i}", values[i] ?? DBNull.Value);
        }

        return command;
    }
}
