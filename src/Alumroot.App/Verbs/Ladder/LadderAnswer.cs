using Alumroot.App.Trials;
using Alumroot.Trials.Ladder;

namespace Alumroot.App.Verbs.Ladder;

/// <summary>What is said of one series.</summary>
internal sealed record LadderAnswer(LadderRow Row, LadderFound Found, IReadOnlyList<LadderColour> Colours, (LadderColour Nearest, double DeltaE2000, (double Least, double Most) AsWell)? Toward);
