namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with a booking.</summary>
internal static class BookingProblems
{
    public static Diagnostic NoSession(SourceSpan at) => Problem.Error(
        "B1264", at, "this booking does not say for which session", "an animal is booked for one session", "write `for session 1` after the method")
        .Or(Proposal.After(at, " for session 1"));

    public static Diagnostic NoSuchSession(SourceSpan at, int sessions) => Problem.Error(
        "B1265", at, $"there is no session {at.Text}", sessions == 1 ? "the programme has one session" : $"the programme has {sessions} sessions, counted from 1",
        $"did you mean session {sessions}?").Or(new Proposal(at, $"{sessions}"));

    /// <param name="at">Her number the second time.</param>
    /// <param name="number">Her number.</param>
    /// <param name="session">The session that she is booked for already.</param>
    public static Diagnostic Twice(SourceSpan at, string number, int session) => Problem.Error(
        "B1266", at, $"{number} is booked twice", $"she is booked for session {session} already; an animal carries for one session", "keep the booking that is meant");
}
