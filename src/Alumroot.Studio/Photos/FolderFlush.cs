using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace Alumroot.Studio.Photos;

/// <summary>Flushes the names in a folder, so that a file that was renamed into it is found after a power cut.</summary>
internal static class FolderFlush
{
    /// <summary>Flushes one folder. On Windows there is nothing to call: the file system journals its names itself.</summary>
    /// <exception cref="IOException">The folder cannot be opened or flushed.</exception>
    public static void Of(string folder)
    {
        if (OperatingSystem.IsWindows()) return;
        // .NET opens no folders; the system does, and the handle is then an ordinary one.
        int descriptor = OpenToRead([.. Encoding.UTF8.GetBytes(folder), 0], 0);
        if (descriptor < 0) throw new IOException($"'{folder}' cannot be opened to flush it: {Marshal.GetLastPInvokeErrorMessage()}");
        using var handle = new SafeFileHandle(descriptor, ownsHandle: true);
        RandomAccess.FlushToDisk(handle);
    }

    [DllImport("libc", EntryPoint = "open", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern int OpenToRead(byte[] path, int flags);
}
