// What most files here speak of. A namespace stands here only where none of its names clashes with another's.
global using System.Text;
global using Byrelaw.Disk;
global using Byrelaw.Judging;
global using Byrelaw.Judging.Promises;
global using Byrelaw.Judging.Verdicts;
global using Byrelaw.Language.Canonical;
global using Byrelaw.Language.Diagnostics;
global using Byrelaw.Language.Reading;
global using Byrelaw.Language.Rulebooks;
global using Byrelaw.Language.Rulebooks.Plans;
global using Byrelaw.Language.Rulebooks.Words;
global using Byrelaw.Language.Sources;
global using Byrelaw.Records.Herds;
global using Byrelaw.Records.Reading;
global using Byrelaw.Workshop.Correcting;
global using Byrelaw.Workshop.Tuning;
global using NodaTime;
