using Alumroot.Benchmarks;
using BenchmarkDotNet.Running;

// "studio FOLDER [BATCHES]" measures the record, "load FOLDER [PEOPLE SECONDS]" many people at once; anything else goes to BenchmarkDotNet.
if (args is ["studio", var folder, .. var rest]) LargeStudioRun.Run(folder, rest is [var batches] ? int.Parse(batches, System.Globalization.CultureInfo.InvariantCulture) : 100_000);
else if (args is ["load", var empty, .. var bounds]) await LoadRun.RunAsync(empty, bounds is [var people, _] ? int.Parse(people, System.Globalization.CultureInfo.InvariantCulture) : 50, bounds is [_, var seconds] ? int.Parse(seconds, System.Globalization.CultureInfo.InvariantCulture) : 600);
else BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
