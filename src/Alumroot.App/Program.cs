namespace Alumroot.App;

internal sealed class Program
{
    private static int Main() => 0;
}
