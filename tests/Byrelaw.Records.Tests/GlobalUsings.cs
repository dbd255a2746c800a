// What most files here speak of. A namespace stands here only where none of its names clashes with another's.
global using System.Text;
global using Byrelaw.Language.Diagnostics;
global using Byrelaw.Language.Reading;
global using Byrelaw.Language.Rulebooks;
global using Byrelaw.Language.Rulebooks.Words;
global using Byrelaw.Records.Csv;
global using Byrelaw.Records.Doubts;
global using Byrelaw.Records.Herds;
global using Byrelaw.Records.Reading;
global using Byrelaw.Records.Tests.Support;
global using Byrelaw.Testing;
global using Byrelaw.Testing.Documents;
global using Byrelaw.Testing.Problems;
global using Byrelaw.Testing.RandomCases;
global using CsCheck;
