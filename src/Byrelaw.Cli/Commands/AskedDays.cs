namespace Byrelaw.Cli.Commands;

/// <summary>The days that a command is given.</summary>
/// <param name="On">The day judged for; null for the programme's own.</param>
/// <param name="KnownOn">The day as known on which it is judged; null for today's knowledge.</param>
/// <param name="RecordsTo">The day up to which a person says that everything is written down; null for what the farm's file says.</param>
internal sealed record AskedDays(LocalDate? On, LocalDate? KnownOn, LocalDate? RecordsTo);
