namespace Alumroot.App.Words;

/// <summary>The pages of <c>docs/models</c> as they were when the program was built: one for each model.</summary>
public static class ModelPages
{
    private const string Prefix = "models/";

    /// <summary>The names of the models, as they stand in addresses.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. typeof(ModelPages).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(name => name[Prefix.Length..])
            .Order(StringComparer.Ordinal)];

    /// <summary>The page of a model, or null when there is none of that name.</summary>
    public static IReadOnlyList<ProseBlock>? Find(string name)
    {
        if (!Names.Contains(name)) return null;
        using Stream stream = typeof(ModelPages).Assembly.GetManifestResourceStream(Prefix + name)!;
        using var reader = new StreamReader(stream);
        return Prose.Blocks(reader.ReadToEnd());
    }

    /// <summary>The page's name: its first heading, or the model's name.</summary>
    public static string TitleOf(string name) =>
        Find(name)?.OfType<ProseBlock.Heading>().FirstOrDefault()?.Text ?? name;
}
