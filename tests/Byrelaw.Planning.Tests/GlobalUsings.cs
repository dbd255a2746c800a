// What most files here speak of. A namespace stands here only where none of its names clashes with another's.
global using System.Collections.Immutable;
global using Byrelaw.Language.Reading;
global using Byrelaw.Language.Rulebooks;
global using Byrelaw.Language.Rulebooks.Plans;
global using Byrelaw.Planning.Calendar;
global using Byrelaw.Planning.Carrying;
global using Byrelaw.Planning.Chances;
global using Byrelaw.Planning.Forecasting;
global using Byrelaw.Planning.LeadTimes;
global using Byrelaw.Planning.Recipients;
global using Byrelaw.Planning.Seasons;
global using Byrelaw.Planning.Tests.Calendar;
global using Byrelaw.Planning.Tests.Forecasting;
global using Byrelaw.Planning.Tests.Recipients;
global using Byrelaw.Testing;
global using Byrelaw.Testing.RandomCases;
global using NodaTime;
