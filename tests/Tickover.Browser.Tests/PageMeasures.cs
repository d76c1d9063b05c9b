using System.Text.Json;
using Microsoft.Playwright;

namespace Tickover.Browser.Tests;

/// <summary>What is measured on a page as it stands in the browser.</summary>
internal static class PageMeasures
{
    /// <summary>Waits until the style sheets, the letters and the layout stand: a page that was come to by a tap may be there before
    /// its style sheets are, and one just made narrower before its layout is.</summary>
    public static async Task SettledAsync(IPage page)
    {
        await page.WaitForLoadStateAsync(LoadState.Load);
        await page.EvaluateAsync("() => document.fonts.ready.then(() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(true)))))");
    }

    /// <summary>Pixels by which the page, once it has settled, is wider than the window.</summary>
    public static async Task<int> OverflowAsync(IPage page)
    {
        await SettledAsync(page);
        return await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
    }

    /// <summary>Targets smaller than 48 px either way, links inside running text and inside pictures apart.</summary>
    public static async Task<IReadOnlyList<string>> SmallTargetsAsync(IPage page) => await ListAsync(page, """
        () => [...document.querySelectorAll('a[href], button, input:not([type=hidden]), textarea, summary')]
          .filter(e => !(e instanceof SVGElement) && !e.closest('p, li, .text') && !e.classList.contains('skip'))
          .map(e => [e, e.getBoundingClientRect()])
          .filter(([, b]) => b.width > 0 && (b.width < 47.5 || b.height < 47.5))
          .map(([e, b]) => `${e.outerHTML.slice(0, 90)} ${Math.round(b.width)}x${Math.round(b.height)}`)
        """);

    /// <summary>Texts drawn smaller than 14 px, in the page and in its pictures.</summary>
    public static async Task<IReadOnlyList<string>> SmallTextsAsync(IPage page) => await ListAsync(page, """
        () => [...document.querySelectorAll('body *')]
          .filter(e => [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim() !== '') && e.getBoundingClientRect().width > 1 && !e.closest('.unseen, noscript, script'))
          .map(e => {
            const picture = e.closest('svg[viewBox]');
            const scale = picture ? picture.getBoundingClientRect().width / picture.viewBox.baseVal.width : 1;
            return [e, parseFloat(getComputedStyle(e).fontSize) * scale];
          })
          .filter(([, size]) => size < 13.5)
          .map(([e, size]) => `${e.textContent.trim().slice(0, 40)}: ${size.toFixed(1)} px`)
        """);

    /// <summary>Texts of pictures that reach over the picture's edge, and texts of the page that are wider than what holds them.</summary>
    public static async Task<IReadOnlyList<string>> CutOffTextsAsync(IPage page) => await ListAsync(page, """
        () => {
          const pictures = [...document.querySelectorAll('svg[viewBox] text')].map(t => [t, t.getBoundingClientRect(), t.closest('svg[viewBox]').getBoundingClientRect()])
            .filter(([, t, s]) => t.width > 0 && (t.left < s.left - 1 || t.right > s.right + 1 || t.top < s.top - 1 || t.bottom > s.bottom + 1));
          const figures = [...document.querySelectorAll('.trio div, .trio b, .size, .part, .btn, h1, h2, h3')].filter(e => e.getBoundingClientRect().width > 1 && e.scrollWidth > e.clientWidth + 1 && getComputedStyle(e).display !== 'inline')
            .map(e => [e, null, null]);
          return [...pictures, ...figures].map(([e]) => `${e.tagName} ${e.textContent.trim().slice(0, 60)}`);
        }
        """);

    private static async Task<IReadOnlyList<string>> ListAsync(IPage page, string script)
    {
        var found = await page.EvaluateAsync<JsonElement>(script);
        return [.. found.EnumerateArray().Select(e => e.GetString()!)];
    }
}
