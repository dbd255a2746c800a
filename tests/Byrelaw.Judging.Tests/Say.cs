using System.Collections;
using System.Text;
using Byrelaw.Language.Rulebooks;
using Byrelaw.Language.Rulebooks.Conditions;
using Byrelaw.Language.Rulebooks.Words;
namespace Byrelaw.Judging.Tests;
public static class Say
{
    public static string It(object? o)
    {
        switch (o)
        {
            case null: return "null";
            case Kind k: return k.Name;
            case Fact f: return f.Name;
            case Spell s: return s.Name;
            case TimeLength t: return t.ToString();
            case string or int or double or bool or Enum or NodaTime.LocalDate: return o is NodaTime.LocalDate d ? d.ToString("yyyy-MM-dd", null) : o.ToString()!;
            case IEnumerable e: return "[" + string.Join("; ", e.Cast<object>().Select(It)) + "]";
        }
        var b = new StringBuilder(o.GetType().Name.Replace("Condition", ""));
        b.Append('(').AppendJoin(", ", o.GetType().GetProperties().Where(p => p.Name is not "Span" and not "EqualityContract" and not "Because" and not "Source" and not "Agreement" and not "Before" and not "Basis" && p.GetIndexParameters().Length == 0)
            .Select(p => (p.Name, V: p.GetValue(o))).Where(p => p.V is not null and not false).Select(p => p.Name is "Test" or "Windows" or "Kind" or "Kinds" or "Items" or "Counted" ? It(p.V) : p.Name + "=" + It(p.V))).Append(')');
        return b.ToString();
    }
    public static string Book(Rulebook b) => string.Join("\n", b.Defines.Select(d => "define " + d.Name + ": " + It(d.Condition) + (d.IsBroken ? " BROKEN" : ""))
        .Concat(b.Rules.Select(r => $"rule {r.Name} {(r.IsSafety ? "safety " : "")}{(r.OnTheDay ? "on the day " : "")}{(r.IsBroken ? "BROKEN " : "")}applies {r.Audience} {It(r.AppliesTo)} ifnotknown {r.IfNotKnown}: {It(r.Needs)}"))
        .Concat(b.Prefers.Select(p => "prefer " + p.Name + ": " + It(p.Condition)))
        .Concat(b.Waivers.Select(w => $"waive {w.Rule} for {w.Animal} {It(w.Agreement.On)}..{It(w.Until)}"))
        .Concat(b.BrokenParts.Select(p => "broken part " + p.List))
        .Concat(b.Programme!.Choices.Select(c => $"choose {c.List} from {c.From} {It(c.Animals)} {c.OtherList} {It(c.JudgedFrom)}..{It(c.JudgedTo)}"))
        .Append("dates " + string.Join(" ", b.Programme.Dates.Select(d => d.Name + "=" + It(d.Date))))
        .Append("up to " + It(b.Records!.UpTo))
        .Concat(b.Records.Complete.Select(c => $"complete for {It(c.Kinds)} since {It(c.Since)}")));
}
