namespace Byrelaw.Judging.Lists;

/// <summary>The answer for one animal in day numbers, without its reasons.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="ReadyFrom">First day of the stretch she is ready in; int.MaxValue for none.</param>
/// <param name="ReadyUntil">Its last day.</param>
/// <param name="NotBefore">For an Ask whose rules fail on the judging days: the first later day on which they may hold; else int.MaxValue.</param>
internal readonly record struct Conclusion(Answer Answer, int ReadyFrom, int ReadyUntil, int NotBefore)
{
    public static Conclusion Without(Answer answer, int notBefore = int.MaxValue) =>
        new(answer, int.MaxValue, int.MaxValue, notBefore);
}
