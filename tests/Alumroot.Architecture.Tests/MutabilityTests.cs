using System.Reflection;
using System.Runtime.CompilerServices;

namespace Alumroot.Architecture.Tests;

/// <summary>Nothing in an engine changes behind one's back.</summary>
public class MutabilityTests
{
    private const BindingFlags Everything = BindingFlags.Static | BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    private static IEnumerable<Type> EngineTypes => Rooms.Engines.SelectMany(Rooms.WrittenTypes);

    [Fact]
    public void Static_fields_are_never_assigned_twice() => None(
        EngineTypes.SelectMany(ChangingStatics));

    [Fact]
    public void Collections_that_everybody_sees_cannot_be_written_to() => None(
        from type in EngineTypes.Where(t => t.IsVisible)
        from member in type.GetMembers(BindingFlags.Static | BindingFlags.Public | BindingFlags.DeclaredOnly)
        let held = member is FieldInfo field ? field.FieldType : member is PropertyInfo property ? property.PropertyType : null
        where held is not null && IsWritableCollection(held)
        select $"{type.FullName}.{member.Name} is a {held.Name}");

    [Fact]
    public void Public_properties_are_set_once_at_most() => None(
        EngineTypes.Where(t => t.IsVisible).SelectMany(SettableProperties).Except(Allowances.Read("settable.csv", "member").Keys));

    [Fact]
    public void Public_fields_cannot_be_assigned() => None(
        from type in EngineTypes.Where(t => t.IsVisible && !t.IsEnum)
        from field in type.GetFields(BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.DeclaredOnly)
        where !field.IsInitOnly && !field.IsLiteral
        select $"{type.FullName}.{field.Name}");

    [Fact]
    public void The_rules_see_what_they_should()
    {
        Assert.Single(ChangingStatics(typeof(Careless)));
        Assert.Equal([$"{typeof(Careless).FullName}.Settable"], SettableProperties(typeof(Careless)));
        Assert.True(IsWritableCollection(typeof(double[])));
        Assert.False(IsWritableCollection(typeof(IReadOnlyList<double>)));
    }

    private static IEnumerable<string> ChangingStatics(Type type) =>
        from field in type.GetFields(Everything)
        where field.IsStatic && !field.IsInitOnly && !field.IsLiteral
        select $"{type.FullName}.{field.Name}";

    private static IEnumerable<string> SettableProperties(Type type) =>
        from property in type.GetProperties(BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.DeclaredOnly)
        let setter = property.GetSetMethod()
        where setter is not null && !setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit))
        select $"{type.FullName}.{property.Name}";

    private static bool IsWritableCollection(Type type) =>
        type.IsArray || (type.IsGenericType && type.GetGenericTypeDefinition() is var d && (d == typeof(List<>) || d == typeof(Dictionary<,>) || d == typeof(HashSet<>) || d == typeof(IList<>) || d == typeof(IDictionary<,>)));

    private static void None(IEnumerable<string> found)
    {
        string[] all = [.. found];
        Assert.True(all.Length == 0, string.Join("\n", all));
    }

    internal sealed class Careless
    {
        internal static int Counter = 1;

        public int Settable { get; set; } = Counter;

        public int Once { get; init; }
    }
}
