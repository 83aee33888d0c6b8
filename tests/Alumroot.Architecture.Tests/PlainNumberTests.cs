using System.Reflection;
using System.Text.RegularExpressions;

namespace Alumroot.Architecture.Tests;

/// <summary>A double without a type says its unit in its name: grams, celsius, moles. Names without one stand in an allow-list with the reason.</summary>
public partial class PlainNumberTests
{
    private static readonly string[] Watched = ["Alumroot.Quantities", "Alumroot.Chemistry"];

    private static readonly HashSet<string> UnitWords = [.. Allowances.Rows("unit_words.csv").Select(r => r["word"])];

    private static readonly IReadOnlyDictionary<string, string> Allowed = Allowances.Read("plain_numbers.csv", "name");

    [Fact]
    public void Every_public_number_names_its_unit()
    {
        string[] found = [.. Rooms.Engines.Where(e => Watched.Contains(e.GetName().Name)).SelectMany(Rooms.WrittenTypes).Where(t => t.IsVisible).SelectMany(Numbers)
            .Where(n => !NamesUnit(n.Name) && !Allowed.ContainsKey(n.Name) && !Allowed.ContainsKey($"{n.Type.Name}.{n.Name}"))
            .Select(n => $"{n.Type.FullName}: {n.Where} {n.Name}").Distinct()];
        Assert.True(found.Length == 0, "These numbers do not say their unit; rename them, or add them to Allowed/plain_numbers.csv with the reason:\n" + string.Join("\n", found));
    }

    [Theory]
    [InlineData("Grams", true)]
    [InlineData("alkaliGrams", true)]
    [InlineData("MolesPerLitre", true)]
    [InlineData("MolalityOf", true)]
    [InlineData("temperature_c", false)]
    [InlineData("Programs", false)]
    [InlineData("Amount", false)]
    public void The_rule_knows_a_unit_when_it_sees_one(string name, bool unit) => Assert.Equal(unit, NamesUnit(name));

    /// <summary>The last word, or the one before "Of", "At" or "From", is a unit; or the name is the unit.</summary>
    private static bool NamesUnit(string name)
    {
        string[] words = [.. Words().Matches(name).Select(m => m.Value)];
        int joint = Array.FindIndex(words, 1 < words.Length ? 1 : 0, w => w is "Of" or "At" or "By" or "For");
        string[] named = joint > 0 ? words[..joint] : words;
        return named.Length > 0 && (UnitWords.Contains(Capital(named[^1])) || (named.Length > 1 && UnitWords.Contains(Capital(named[^2]) + named[^1])) || UnitWords.Contains(Capital(named[0]) + "*"));
    }

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];

    private static IEnumerable<(Type Type, string Where, string Name)> Numbers(Type type)
    {
        const BindingFlags flags = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        foreach (PropertyInfo p in type.GetProperties(flags).Where(p => IsNumber(p.PropertyType))) yield return (type, "property", p.Name);
        foreach (FieldInfo f in type.GetFields(flags).Where(f => IsNumber(f.FieldType))) yield return (type, "field", f.Name);
        foreach (MethodInfo m in type.GetMethods(flags).Where(m => !m.IsSpecialName && IsNumber(m.ReturnType))) yield return (type, "method", m.Name);
        foreach (MethodBase m in type.GetMethods(flags).Cast<MethodBase>().Concat(type.GetConstructors(flags)))
            foreach (ParameterInfo p in m.GetParameters().Where(p => IsNumber(p.ParameterType) && p.Name is not null && !IsSetter(m)))
                yield return (type, $"{m.Name} parameter", p.Name!);
    }

    private static bool IsSetter(MethodBase m) => m.IsSpecialName && m.Name.StartsWith("set_", StringComparison.Ordinal);

    private static bool IsNumber(Type type)
    {
        if (type.IsByRef || type.IsArray) return IsNumber(type.GetElementType()!);
        if (type.IsGenericType && type.GetGenericArguments() is [var only] && (type.Name.StartsWith("Nullable", StringComparison.Ordinal) || type.Name.Contains("Span", StringComparison.Ordinal) || type.Name.Contains("List", StringComparison.Ordinal))) return IsNumber(only);
        return type == typeof(double);
    }

    [GeneratedRegex("[A-Z]?[a-z]+|[A-Z]+(?![a-z])|[0-9]+")]
    private static partial Regex Words();
}
