namespace Tickover.Web;

/// <summary>The tablet app.</summary>
public static class WebApp;
