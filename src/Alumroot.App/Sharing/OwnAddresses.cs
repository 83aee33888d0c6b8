using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Alumroot.App.Sharing;

/// <summary>The names under which this machine is reached from the local network, and no others.</summary>
internal static class OwnAddresses
{
    /// <summary>IPv4 addresses first, those with a way to the rest of the network before others; then IPv6; then the machine's name.</summary>
    public static IReadOnlyList<string> Find() =>
    [
        .. NetworkInterface.GetAllNetworkInterfaces()
            .Where(n => n.OperationalStatus == OperationalStatus.Up && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .Select(n => n.GetIPProperties())
            .SelectMany(p => p.UnicastAddresses.Select(a => (a.Address, Leads: p.GatewayAddresses.Count > 0)))
            .Where(a => a.Address.AddressFamily == AddressFamily.InterNetwork || (a.Address.AddressFamily == AddressFamily.InterNetworkV6 && !a.Address.IsIPv6LinkLocal))
            .Where(a => !IPAddress.IsLoopback(a.Address))
            .OrderBy(a => a.Address.AddressFamily == AddressFamily.InterNetwork ? 0 : 1).ThenBy(a => a.Leads ? 0 : 1)
            .Select(a => a.Address.AddressFamily == AddressFamily.InterNetwork ? a.Address.ToString() : $"[{a.Address}]")
            .Append(Environment.MachineName.ToLowerInvariant()).Append($"{Environment.MachineName.ToLowerInvariant()}.local")
            .Distinct(),
    ];
}
