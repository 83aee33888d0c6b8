using System.Reflection;
using System.Xml.Linq;

namespace Alumroot.Architecture.Tests;

/// <summary>Who may know whom: by the project files, and by what the compiled rooms really use.</summary>
public class LayerTests
{
    public static TheoryData<string> Projects => new(Repository.Files("src", ".csproj").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal));

    [Theory, MemberData(nameof(Projects))]
    public void A_project_refers_only_to_rooms_it_may_know(string project)
    {
        Assert.True(Rooms.MayKnow.TryGetValue(project, out string[]? may), $"{project} is a new room: say in Rooms.cs whom it may know.");
        string file = Repository.Files("src", project + ".csproj").Single(f => Path.GetFileNameWithoutExtension(f) == project);
        IEnumerable<string> known = XDocument.Load(file).Descendants("ProjectReference")
            .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/')));
        Assert.Empty(known.Except(may));
    }

    [Fact]
    public void A_compiled_room_uses_only_rooms_it_may_know()
    {
        foreach (Assembly room in Rooms.All)
        {
            string name = room == Rooms.App ? Rooms.AppProject : room.GetName().Name!;
            IEnumerable<string> used = room.GetReferencedAssemblies().Select(a => a.Name!)
                .Where(n => n.StartsWith("Alumroot", StringComparison.OrdinalIgnoreCase));
            Assert.True(Rooms.MayKnow.ContainsKey(name), $"{name} is a new room: say in Rooms.cs whom it may know.");
            string[] tooMuch = [.. used.Except(Rooms.MayKnow[name])];
            Assert.True(tooMuch.Length == 0, $"{name} uses {string.Join(", ", tooMuch)}.");
        }
    }

    [Fact]
    public void Engines_stand_on_the_framework_alone_and_only_Numerics_names_a_numerics_library()
    {
        foreach (Assembly engine in Rooms.Engines)
        {
            bool mayNumerics = engine.GetName().Name == "Alumroot.Numerics";
            string[] foreign = [.. engine.GetReferencedAssemblies().Select(a => a.Name!)
                .Where(n => !n.StartsWith("System", StringComparison.Ordinal) && !n.StartsWith("Alumroot", StringComparison.Ordinal) && n is not ("netstandard" or "mscorlib"))
                .Where(n => !(mayNumerics && n == "MathNet.Numerics"))];
            Assert.True(foreign.Length == 0, $"{engine.GetName().Name} uses {string.Join(", ", foreign)}.");
        }
    }

    [Fact]
    public void All_engines_are_seen()
    {
        string[] seen = [.. Rooms.Engines.Select(e => e.GetName().Name!)];
        string[] expected = [.. Repository.Files("src", ".csproj").Select(f => Path.GetFileNameWithoutExtension(f)!).Where(n => n is not (Rooms.AppProject or "Alumroot.Studio"))];
        Assert.Equal(expected.Order(StringComparer.Ordinal), seen);
        Assert.Contains("Alumroot.Quantities", seen);
    }
}
