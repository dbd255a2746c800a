namespace Byrelaw.Workshop.Correcting;

/// <summary>Bounds what trying may cost, in characters read, so that no file takes long and every run does the same.</summary>
internal sealed class Effort
{
    private int _left = 4_000_000;

    /// <summary>Whether a text of this length may still be read; if so, it is paid for.</summary>
    public bool Take(int characters)
    {
        _left -= characters;
        return _left >= 0;
    }
}
