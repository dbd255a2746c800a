using Byrelaw.Language.Syntax.Lines;
using Byrelaw.Language.Tidying.Layouts;

namespace Byrelaw.Language.Tidying.Printing;

/// <summary>Lines inside <c>records</c> and <c>programme</c>.</summary>
internal static class FarmLinePrinter
{
    /// <summary>How it is set; null for other lines.</summary>
    public static Layout? Of(LineSyntax line) => line switch
    {
        UpToLine upTo => new OneLine($"up to {Words.Date(upTo.Day)}"),
        CompleteForLine complete => new OneLine($"complete for {Words.Names(complete.Kinds)} since {Words.Date(complete.Since)}"),
        LeaveOutLine leave => new OneLine($"leave out {Words.Names(leave.Names)}"),
        CollectionLine collection => new OneLine($"collection on {Words.Date(collection.Day)}"),
        TransferLine transfer => new OneLine($"transfer {When(transfer)}{(transfer.Over is null ? "" : $", over {Words.Duration(transfer.Over)}")}"),
        DateLine date => new OneLine($"date {Words.Name(date.Name)} on {Words.Date(date.Day)}"),
        ChooseLine choose => new OneLine($"choose {Words.Name(choose.List)} from {Whom(choose)}, judged {Judged(choose)}"),
        _ => null,
    };

    private static string When(TransferLine transfer) =>
        transfer.Day is { } day ? $"on {Words.Date(day)}" : $"{Words.Duration(transfer.Wait!)} after {Words.Name(transfer.After!)}";

    private static string Whom(ChooseLine choose) => choose.From is null ? Words.Texts(choose.Animals) : Words.Name(choose.From);

    private static string Judged(ChooseLine choose) =>
        choose.Last is null ? $"on {TailPrinter.Of(choose.First)}" : $"from {TailPrinter.Of(choose.First)} to {TailPrinter.Of(choose.Last)}";
}
