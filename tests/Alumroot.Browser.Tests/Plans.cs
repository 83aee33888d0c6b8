namespace Alumroot.Browser.Tests;

/// <summary>Addresses of plans in each state that the page can be in.</summary>
internal static class Plans
{
    /// <summary>A whole plan.</summary>
    public const string Madder = "/lakes/plan?dyestuff=madder&dry=100%20g&water=3%20L&salt=potash-alum&salt-amount=50%20g&alkali=soda-ash&temp=60%20C&to-ph=6.5";

    /// <summary>The same weights in kitchen units, home-baked soda.</summary>
    public const string Kitchen = "/lakes/plan?dyestuff=weld&dry=3.5%20oz&salt=potash-alum&alkali=home-baked-soda&baked-before=200%20g&baked-after=128%20g&units=kitchen";

    /// <summary>Lye first, copper salt last, no plant.</summary>
    public const string AlkaliFirst = "/lakes/plan?salt=copper-sulfate&salt-amount=20%20g&alkali=wood-ash-lye&alkali-strength=0.8&water=1%20L&order=alkali-first";

    /// <summary>A packet that says only "alum", and soda not yet weighed.</summary>
    public const string WhichAlum = "/lakes/plan?dyestuff=madder&dry=1,500%20g&salt=alum&alkali=home-baked-soda";

    /// <summary>Fields that need another look.</summary>
    public const string Troubled = "/lakes/plan?dyestuff=maddr&dry=100&water=5o%20g&salt=potash-alum&alkali=soda-ash&temp=140";

    /// <summary>A salt that is not planned with.</summary>
    public const string Refused = "/lakes/plan?dyestuff=madder&dry=100%20g&salt=lead-acetate&salt-amount=50%20g&alkali=soda-ash";

    /// <summary>An aim below the start.</summary>
    public const string OutOfReach = "/lakes/plan?dyestuff=madder&dry=100%20g&salt=potash-alum&alkali=soda-ash&to-ph=3";

    /// <summary>A vessel that would foam over.</summary>
    public const string HeldBack = "/lakes/plan?dyestuff=madder&dry=100%20g&salt=potash-alum&alkali=soda-ash&vessel=5%20L";

    /// <summary>Weights and a stated pH that cannot both hold.</summary>
    public const string Quarrel = "/lakes/plan?dyestuff=madder&dry=100%20g&water=3%20L&salt=potash-alum&salt-amount=50%20g&alkali=soda-ash&aim=amount&alkali-amount=30%20g&to-ph=6.5";

    /// <summary>A pot that only just holds it: many portions.</summary>
    public const string ManyPortions = "/lakes/plan?dyestuff=madder&dry=1%20kg&water=12%20L&salt=potash-alum&salt-amount=1.2%20kg&alkali=soda-ash&to-ph=6.5&vessel=50%20L";

    /// <summary>Strong bath, pure water, a low aim: many washes.</summary>
    public const string ManyWashes = "/lakes/plan?dyestuff=madder&dry=100%20g&water=1%20L&salt=potash-alum&salt-amount=150%20g&alkali=soda-ash&to-ph=6.5&wash-water=pure&wash-to=20%20uS";
}
