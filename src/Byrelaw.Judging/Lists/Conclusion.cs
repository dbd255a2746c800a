namespace Byrelaw.Judging.Lists;

/// <summary>The answer for one animal in day numbers, without its reasons.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="ReadyFrom">First day of the stretch she is ready in; int.MaxValue for none.</param>
/// <param name="ReadyUntil">Its last day.</param>
/// <param name="NotBefore">For a Later: the first day of the first later stretch on which no rule fails, where that is before she is ready; else int.MaxValue.</param>
internal readonly record struct Conclusion(Answer Answer, int ReadyFrom, int ReadyUntil, int NotBefore)
{
    public static Conclusion Without(Answer answer) => new(answer, int.MaxValue, int.MaxValue, int.MaxValue);
}
