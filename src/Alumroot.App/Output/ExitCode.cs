namespace Alumroot.App.Output;

/// <summary>What the command tells the caller when it ends. Scripts rely on these numbers.</summary>
public static class ExitCode
{
    /// <summary>Done as asked.</summary>
    public const int Done = 0;

    /// <summary>Understood, but it cannot be met: impossible, unsafe, or nothing found. The reason has been said.</summary>
    public const int CannotBeMet = 1;

    /// <summary>What was typed or read is wrong. The message names the word or the line and what was expected.</summary>
    public const int InputWrong = 2;

    /// <summary>The studio's folder or record is locked, damaged or cannot be written.</summary>
    public const int RecordTrouble = 3;

    /// <summary>Stopped by Ctrl-C.</summary>
    public const int Interrupted = 130;
}
