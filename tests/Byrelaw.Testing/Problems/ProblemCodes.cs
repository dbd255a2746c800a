using System.Reflection;
using System.Reflection.Emit;
using System.Text.RegularExpressions;

namespace Byrelaw.Testing.Problems;

/// <summary>Finds the codes of problems in a compiled program, wherever they stand in it.</summary>
public static partial class ProblemCodes
{
    private const int StringTable = 0x70;

    /// <summary>Every text in the code of an assembly that has the form of a problem's code, with how often it is loaded.</summary>
    public static IReadOnlyDictionary<string, int> In(Assembly assembly)
    {
        ArgumentNullException.ThrowIfNull(assembly);
        const BindingFlags All = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;
        return assembly.GetTypes()
            .SelectMany(type => type.GetMethods(All).Cast<MethodBase>().Concat(type.GetConstructors(All)))
            .SelectMany(Texts)
            .Where(text => Code().IsMatch(text))
            .CountBy(text => text)
            .ToDictionary();
    }

    private static IEnumerable<string> Texts(MethodBase method)
    {
        var code = method.GetMethodBody()?.GetILAsByteArray() ?? [];
        for (var i = 0; i + 4 < code.Length; i++)
        {
            if (code[i] == OpCodes.Ldstr.Value && code[i + 4] == StringTable)
            {
                yield return Text(method.Module, BitConverter.ToInt32(code, i + 1));
            }
        }
    }

    // A byte of another instruction may look like the start of one that loads a text.
    private static string Text(Module module, int token)
    {
        try
        {
            return module.ResolveString(token);
        }
        catch (ArgumentException)
        {
            return "";
        }
    }

    [GeneratedRegex("^[BJLR][0-9]{4}$")]
    private static partial Regex Code();
}
