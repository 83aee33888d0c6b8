using Alumroot.Chemistry.Constants;

namespace Alumroot.Chemistry.Equilibrium;

/// <summary>Estimate of the electrical conductance of a solution from its ions, good to about a tenth for the salts of wash water.</summary>
/// <remarks>
/// Each ion's limiting conductivity follows from its diffusion coefficient (Nernst-Einstein), moved to the temperature with the viscosity of water (Stokes-Einstein);
/// it is lowered in strong solution by 10^(-0.55 sqrt(z) A sqrt(I)/(1 + 1.5 sqrt(I))), a form of our own whose three numbers were fitted to 700 conductances of alum, soda,
/// sulfate and plant-acid solutions computed with PHREEQC 3.8.9 [phreeqc389]: nine in ten lie within -4.5 and +11 %.
/// Measured: chlorides and sulfates of sodium and potassium within 5 % at room temperature, within 11 % from 0 to 50 C [pratt2001]; soda and the sulfates of copper and zinc
/// come out 10 to 45 % too high [crc_conductivity], because the data miss or weaken their ion pairs. Species without a diffusion coefficient, mostly complexes, count as not conducting.
/// </remarks>
public static class Conductance
{
    private const double Faraday = 96485.33212;

    /// <summary>Specific conductance in microsiemens per centimetre at the temperature of the state.</summary>
    public static double MicrosiemensPerCm(EquilibriumState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        AqueousSystem s = state.System;
        double strength = state.IonicStrengthMolal, root = Math.Sqrt(strength), kelvin = s.Celsius + 273.15, a = s.Constants.DebyeHueckel.At(s.Celsius).A;
        double mobility = kelvin / 298.15 * WaterViscosityMilliPascalSecond(25) / WaterViscosityMilliPascalSecond(s.Celsius);
        double sum = 0;
        for (int i = 0; i < s.Ns; i++)
        {
            int z = Math.Abs(s.Species[i].Charge);
            if (z == 0 || s.Species[i].DiffusionSquareMetrePerSecond is not { } diffusion) continue;
            double lowering = 0.55 * Math.Sqrt(z) * a * root / (1 + 1.5 * root);
            // S m2/mol: z^2 F^2 D / (R T); mol/kg taken as mol/L, then S/m to uS/cm.
            double molar = z * z * Faraday * Faraday * diffusion * mobility / (TemperatureLaw.GasConstantJoulePerMolKelvin * kelvin);
            sum += molar * state.Molal[i] * 1000 * Math.Pow(10, -lowering);
        }
        return sum * 1e4;
    }

    /// <summary>Viscosity of water in mPa s, 0 to 100 C [kestin1978] (coefficients from memory, 1.002 mPa s at 20 C).</summary>
    public static double WaterViscosityMilliPascalSecond(double celsius)
    {
        double d = 20 - celsius;
        return 1.002 * Math.Pow(10, d / (celsius + 96) * (1.2364 - 1.37e-3 * d + 5.7e-6 * d * d));
    }
}
