using System.ComponentModel;
using System.Diagnostics;

namespace Alumroot.App.Hosting;

/// <summary>Opens an address in the browser where there is a desktop and somebody at it.</summary>
public static class Desktop
{
    /// <summary>Opens the address; does nothing on a machine without a desktop, or when the output goes to another program.</summary>
    public static void TryOpen(string address)
    {
        if (!IsThere) return;
        string opener = OperatingSystem.IsWindows() ? "explorer" : OperatingSystem.IsMacOS() ? "open" : "xdg-open";
        try
        {
            using Process? process = Process.Start(new ProcessStartInfo(opener, address) { UseShellExecute = false });
        }
        catch (Win32Exception)
        {
            // No opener on this desktop: the printed address is enough.
        }
    }

    private static bool IsThere =>
        Environment.UserInteractive
        && !Console.IsOutputRedirected
        && (OperatingSystem.IsWindows() || OperatingSystem.IsMacOS()
            || !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("DISPLAY"))
            || !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("WAYLAND_DISPLAY")));
}
