using System.Reflection;

namespace Alumroot.Architecture.Tests;

/// <summary>The rooms of the house and who may know whom.</summary>
internal static class Rooms
{
    /// <summary>What each room may know. A new room needs a line here.</summary>
    public static IReadOnlyDictionary<string, string[]> MayKnow { get; } = new Dictionary<string, string[]>
    {
        ["Alumroot.Quantities"] = [],
        ["Alumroot.Numerics"] = [],
        ["Alumroot.Chemistry"] = ["Alumroot.Quantities", "Alumroot.Numerics"],
        ["Alumroot.Colour"] = ["Alumroot.Quantities", "Alumroot.Numerics"],
        ["Alumroot.Paint"] = ["Alumroot.Quantities", "Alumroot.Numerics"],
        ["Alumroot.Permanence"] = ["Alumroot.Quantities", "Alumroot.Numerics"],
        ["Alumroot.Trials"] = ["Alumroot.Quantities", "Alumroot.Numerics"],
        ["Alumroot.Catalogue"] = ["Alumroot.Quantities"],
        ["Alumroot.Studio"] = ["Alumroot.Quantities"],
        [AppProject] = ["Alumroot.Quantities", "Alumroot.Numerics", "Alumroot.Chemistry", "Alumroot.Colour", "Alumroot.Paint", "Alumroot.Permanence", "Alumroot.Trials", "Alumroot.Catalogue", "Alumroot.Studio"],
    };

    public const string AppProject = "Alumroot.App";

    /// <summary>The application's assembly has the program's name.</summary>
    public const string AppAssembly = "alumroot";

    /// <summary>Rooms that touch the world outside; all others are engines and pure.</summary>
    private static readonly string[] Outer = [AppProject, AppAssembly, "Alumroot.Studio"];

    public static IReadOnlyList<Assembly> Engines { get; } =
    [
        .. Directory.EnumerateFiles(AppContext.BaseDirectory, "Alumroot.*.dll")
            .Select(f => Path.GetFileNameWithoutExtension(f)!)
            .Where(n => !Outer.Contains(n) && !n.EndsWith(".Tests", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(Assembly.Load),
    ];

    public static Assembly App { get; } = Assembly.Load(AppAssembly);

    /// <summary>The record: it keeps files, and knows nothing of the engines.</summary>
    public static Assembly Studio { get; } = Assembly.Load("Alumroot.Studio");

    public static IEnumerable<Assembly> All => Engines.Append(Studio).Append(App);

    /// <summary>Types that a person wrote, not the compiler.</summary>
    public static IEnumerable<Type> WrittenTypes(Assembly assembly) => assembly.GetTypes().Where(IsWritten);

    private static bool IsWritten(Type type)
    {
        for (Type? t = type; t is not null; t = t.DeclaringType)
            if (t.Name.Contains('<', StringComparison.Ordinal) || t.GetCustomAttribute<System.Runtime.CompilerServices.CompilerGeneratedAttribute>() is not null || t.GetCustomAttribute<System.CodeDom.Compiler.GeneratedCodeAttribute>() is not null)
                return false;
        return true;
    }
}
