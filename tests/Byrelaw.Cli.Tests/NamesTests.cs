using System.Reflection;
using System.Runtime.CompilerServices;

namespace Byrelaw.Cli.Tests;

/// <summary>One name, one thing: whoever searches for a type finds that one.</summary>
public sealed class NamesTests
{
    [Fact]
    public void No_two_types_share_a_name()
    {
        var types = Assemblies().SelectMany(assembly => assembly.GetTypes())
            .Where(type => !type.IsNested && type.Name[0] != '<' && type.Namespace?.StartsWith("Byrelaw.", StringComparison.Ordinal) == true && !type.IsDefined(typeof(CompilerGeneratedAttribute)))
            .ToList();
        types.Count.ShouldBeGreaterThan(1000);
        types.GroupBy(type => type.Name).Where(same => same.Count() > 1)
            .Select(same => string.Join(" and ", same.Select(type => type.FullName))).ShouldBeEmpty();
    }

    /// <summary>The program's own, with all that it is made of.</summary>
    private static IEnumerable<Assembly> Assemblies()
    {
        var found = new HashSet<Assembly> { typeof(Doors).Assembly };
        var open = new Queue<Assembly>(found);
        while (open.TryDequeue(out var assembly))
        {
            foreach (var name in assembly.GetReferencedAssemblies().Where(name => name.Name!.StartsWith("Byrelaw.", StringComparison.Ordinal)))
            {
                if (Assembly.Load(name) is var used && found.Add(used))
                {
                    open.Enqueue(used);
                }
            }
        }

        return found;
    }
}
