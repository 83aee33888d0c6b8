using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Alumroot.Browser.Tests;

/// <summary>What must hold on every page. Each rule gives back what breaks it, in words; an empty list is a pass.</summary>
internal static partial class Rules
{
    // Read from its package once; it goes into a page once and can then be run in every look.
    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    /// <summary>Every rule, each finding with the rule's name before it.</summary>
    /// <param name="page">The page.</param>
    /// <param name="wholly">Whether axe tries everything, or only what width and scheme change.</param>
    public static async Task<IReadOnlyList<string>> AllAsync(IPage page, bool wholly = true) =>
    [
        .. Named("accessibility", await AxeAsync(page, wholly)),
        .. Named("scrolls sideways", await SidewaysAsync(page)),
        .. Named("small target", await SmallTargetsAsync(page)),
        .. Named("coloured", await ColouredAsync(page)),
        .. Named("inline", await InlineAsync(page)),
        .. Named("small letters", await SmallLettersAsync(page)),
        .. Named("words", await WordsAsync(page)),
    ];

    /// <summary>WCAG 2.0 to 2.2 A and AA and best practice, by axe-core; or of these only contrast, targets and what scrolls.</summary>
    public static async Task<IReadOnlyList<string>> AxeAsync(IPage page, bool wholly = true)
    {
        if (!await page.EvaluateAsync<bool>("() => 'axe' in window")) await page.EvaluateAsync(Axe);
        return await page.EvaluateAsync<string[]>(
            """
            async wholly => {
              const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
              const looks = ['color-contrast', 'target-size', 'scrollable-region-focusable'];
              const runOnly = wholly ? { type: 'tag', values: tags } : { type: 'rule', values: looks };
              const result = await axe.run(document, { runOnly, resultTypes: ['violations'] });
              if (result.testEngine.name !== 'axe-core') return ['axe did not run'];
              return result.violations.map(v => `${v.id}: ${v.help}; ${v.nodes.map(n => n.html).join(' | ')}`);
            }
            """,
            wholly);
    }

    /// <summary>Nothing is wider than the screen; wide tables scroll inside their own region.</summary>
    public static Task<string[]> SidewaysAsync(IPage page) => page.EvaluateAsync<string[]>(
        """
        () => {
          const root = document.documentElement;
          if (root.scrollWidth <= root.clientWidth) return [];
          const wide = [...document.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > root.clientWidth + 1 && !e.closest('.table-region, .unseen, .skip'));
          return [`${root.scrollWidth} px in ${root.clientWidth} px`, ...wide.slice(-5).map(e => e.outerHTML.slice(0, 120))];
        }
        """);

    /// <summary>Targets of 24 px and more, buttons, fields and row links of 44 px and more; links inside a sentence excepted (WCAG 2.2, 2.5.8).</summary>
    public static Task<string[]> SmallTargetsAsync(IPage page) => page.EvaluateAsync<string[]>(
        """
        () => [...document.querySelectorAll('a[href], button, input, select, textarea, summary')].flatMap(e => {
          const target = e.matches('input[type=radio], input[type=checkbox]') ? e.closest('label') ?? e : e;
          const box = target.getBoundingClientRect();
          if (box.width === 0 || e.closest('.skip')) return [];
          const inSentence = e.matches('a') && getComputedStyle(e).display === 'inline';
          if (inSentence) return [];
          const least = e.matches('.figure-how') ? 24 : 44;
          const width = e.matches('a, summary') ? 24 : least;
          return box.height < least - 0.5 || box.width < width - 0.5 ? [`${Math.round(box.width)} x ${Math.round(box.height)}: ${e.outerHTML.slice(0, 120)}`] : [];
        })
        """);

    /// <summary>Every colour outside samples and pictures is a grey with equal red, green and blue.</summary>
    public static Task<string[]> ColouredAsync(IPage page) => page.EvaluateAsync<string[]>(
        """
        () => {
          const props = ['color', 'backgroundColor', 'borderTopColor', 'borderRightColor', 'borderBottomColor', 'borderLeftColor', 'outlineColor', 'fill', 'stroke', 'textDecorationColor', 'caretColor'];
          const found = new Set();
          for (const e of document.querySelectorAll('html, body, body *')) {
            if (e.closest('.swatch, .sample-colour, img, script')) continue;
            const style = getComputedStyle(e);
            for (const p of props) {
              const m = /^rgba?\((\d+), (\d+), (\d+)/.exec(style[p]);
              if (m ? m[1] !== m[2] || m[2] !== m[3] : /^(oklch|lab|color)\(/.test(style[p])) found.add(`${p} ${style[p]} on ${e.outerHTML.slice(0, 80)}`);
            }
          }
          return [...found];
        }
        """);

    /// <summary>Nothing inline: no style attribute or element, no script text, no handler attribute.</summary>
    public static Task<string[]> InlineAsync(IPage page) => page.EvaluateAsync<string[]>(
        """
        () => [...document.querySelectorAll('*')].filter(e =>
            e.hasAttribute('style') || e.matches('style') || (e.matches('script') && e.textContent.trim()) || [...e.attributes].some(a => a.name.startsWith('on')))
          .map(e => e.outerHTML.slice(0, 120))
        """);

    /// <summary>Letters on the drawings and the page of at least 16 px.</summary>
    public static Task<string[]> SmallLettersAsync(IPage page) => page.EvaluateAsync<string[]>(
        """
        () => [...document.querySelectorAll('body *')].flatMap(e => {
          if (![...e.childNodes].some(n => n.nodeType === 3 && n.textContent.trim()) || e.closest('script, desc, option')) return [];
          if (e.getBoundingClientRect().width === 0) return [];
          const matrix = e.ownerSVGElement ? e.getScreenCTM() : null;
          const px = parseFloat(getComputedStyle(e).fontSize) * (matrix ? matrix.a : 1);
          return px < 15.99 ? [`${px.toFixed(1)} px: ${e.outerHTML.slice(0, 100)}`] : [];
        })
        """);

    /// <summary>Words that blame or beg, and exclamation marks. (Names that are not used are held by the architecture tests.)</summary>
    public static async Task<IReadOnlyList<string>> WordsAsync(IPage page)
    {
        string text = await page.EvaluateAsync<string>("() => document.title + '\\n' + document.body.innerText");
        return [.. Unwanted().Matches(text).Select(m => $"the word '{m.Value}' in: {text[Math.Max(0, m.Index - 30)..Math.Min(text.Length, m.Index + 40)].ReplaceLineEndings(" ")}")];
    }

    private static IEnumerable<string> Named(string rule, IEnumerable<string> found) => found.Select(f => $"{rule}: {f}");

    [GeneratedRegex(@"\b(invalid|oops|please|error|exception)\b|!", RegexOptions.IgnoreCase)]
    private static partial Regex Unwanted();
}
