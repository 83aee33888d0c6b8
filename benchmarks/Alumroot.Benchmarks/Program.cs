using Alumroot.Benchmarks;
using BenchmarkDotNet.Running;

// "studio FOLDER [BATCHES]" measures the record; anything else goes to BenchmarkDotNet.
if (args is ["studio", var folder, .. var rest]) LargeStudioRun.Run(folder, rest is [var batches] ? int.Parse(batches, System.Globalization.CultureInfo.InvariantCulture) : 100_000);
else BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
