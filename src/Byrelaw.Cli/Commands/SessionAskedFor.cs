using Byrelaw.Planning.Sessions;

namespace Byrelaw.Cli.Commands;

/// <summary><c>--session N</c>: the programme moved to one of its sessions.</summary>
internal static class SessionAskedFor
{
    public static Option<int?> Option(string description) => new("--session") { Description = description, HelpName = "N" };

    /// <summary>The rules with the programme on that session's days.</summary>
    /// <param name="rulebook">With a programme.</param>
    /// <param name="session">From 1; null for the programme as it stands.</param>
    /// <exception cref="CannotDoException">There is no such session.</exception>
    public static Rulebook In(Rulebook rulebook, int? session)
    {
        Check(rulebook, session, on: null);
        return session is { } number ? rulebook with { Programme = Session.Of(rulebook.Programme!)[number - 1].Programme } : rulebook;
    }

    /// <summary>Refuses a session that is not there, or one beside a day of its own.</summary>
    /// <exception cref="CannotDoException">Why it cannot be done.</exception>
    public static void Check(Rulebook rulebook, int? session, LocalDate? on)
    {
        if (session is not { } number)
        {
            return;
        }

        var count = Session.Of(rulebook.Programme!).Length;
        if (on is not null || number < 1 || number > count)
        {
            throw new CannotDoException(on is not null ? "give --session or --on, not both: a session has its own days"
                : count == 0 ? "the programme has no transfers, and so no sessions"
                : $"the programme has {Numbers.Count(count, "session", "sessions")}; there is no session {number}");
        }
    }
}
