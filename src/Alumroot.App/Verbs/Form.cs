namespace Alumroot.App.Verbs;

/// <summary>How an answer is written.</summary>
internal enum Form
{
    Text,
    Json,
    Csv,
}
