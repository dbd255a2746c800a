// What most files here speak of. A namespace stands here only where none of its names clashes with another's.
global using System.Collections.Immutable;
global using System.Text;
global using Byrelaw.Checking.Coverage;
global using Byrelaw.Checking.Examples;
global using Byrelaw.Checking.MadeUp;
global using Byrelaw.Checking.Tests.Support;
global using Byrelaw.Checking.Trouble;
global using Byrelaw.Judging;
global using Byrelaw.Judging.Truths;
global using Byrelaw.Language.Diagnostics;
global using Byrelaw.Language.Reading;
global using Byrelaw.Language.Rulebooks;
global using Byrelaw.Testing;
global using Byrelaw.Testing.RandomCases;
global using NodaTime;
