<#
.SYNOPSIS
Runs the tests in this folder against a built module and writes what came of it as JSON: Passed, Failed, Skips (Name, Reason).
.DESCRIPTION
build.ps1 test calls this in a process of its own. To run one file by hand, give its name with -File.
#>
[CmdletBinding()]
param(
    [Parameter(Mandatory)] [string] $PesterManifest,
    [Parameter(Mandatory)] [string] $ModuleFolder,
    [string] $ReportPath,
    [string] $File = '*'
)

$ErrorActionPreference = 'Stop'

$env:LAYERTOOLS_MODULE = $ModuleFolder
Import-Module $PesterManifest
Import-Module $ModuleFolder

$configuration = New-PesterConfiguration
$configuration.Run.Path = (Get-Item -Path (Join-Path $PSScriptRoot "$File.Tests.ps1")).FullName
$configuration.Run.PassThru = $true
$configuration.Output.Verbosity = 'Normal'
$configuration.Output.CIFormat = 'None'
$run = Invoke-Pester -Configuration $configuration

# Blocks and files that break before their tests run leave those tests out of the count of failures.
$broken = $run.FailedBlocksCount + $run.FailedContainersCount
$skips = foreach ($test in $run.Skipped) {
    $reason = if ($test.ErrorRecord) { $test.ErrorRecord[0].Exception.Message -replace '^is skipped, because ' } else { 'not for this platform or PowerShell' }
    [pscustomobject]@{ Name = $test.ExpandedPath; Reason = $reason }
}

if ($ReportPath) {
    New-Item -ItemType Directory -Path (Split-Path $ReportPath) -Force > $null
    @{ Passed = $run.PassedCount; Failed = $run.FailedCount + $broken; Skips = @($skips) } |
        ConvertTo-Json -Depth 4 | Set-Content -LiteralPath $ReportPath -Encoding utf8
}

exit $(if ($run.FailedCount + $broken) { 1 } else { 0 })
