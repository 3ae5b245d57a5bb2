#!/usr/bin/env pwsh
<#
.SYNOPSIS
Builds, tests, shows and packs LayerTools.
.DESCRIPTION
Needs git and the .NET 10 SDK. Without PowerShell: dotnet tool exec PowerShell@7.6.9 --yes -- ./build.ps1 <task>
.PARAMETER Task
build    leaves an importable module folder at out/LayerTools
test     runs every test; the last line says how many passed and failed
demo     draws a figure, does the main job on it and checks whether it is ready to rig, everything under out/demo
bench    times the main job beside other libraries, see tests/Benchmarks/README.md
package  leaves a package for a PowerShell gallery in out/package
clean    removes everything that the other tasks made
#>
[CmdletBinding()]
param(
    [Parameter(Position = 0)]
    [ValidateSet('build', 'test', 'demo', 'bench', 'package', 'clean')]
    [string] $Task = 'build'
)

Set-StrictMode -Version 3.0
$ErrorActionPreference = 'Stop'

$out = Join-Path $PSScriptRoot 'out'
$moduleFolder = Join-Path $out 'LayerTools'
$frameworks = 'net8.0', 'netstandard2.0'
$nativePlatforms = 'win-x64', 'win-arm64', 'osx', 'linux-x64', 'linux-arm64', 'linux-musl-x64'
$testProjects = 'LayerTools.Core.Tests', 'LayerTools.Core.Tests.NetStandard', 'LayerTools.Sheets.Tests'

function Assert-Sdk {
    $versions = if (Get-Command dotnet -CommandType Application -ErrorAction Ignore) { @(& dotnet --list-sdks) } else { @() }
    if (-not ($versions -match '^(1\d|[2-9]\d)\.')) {
        throw "LayerTools needs the .NET SDK 10 or newer on the PATH; $(if ($versions) { "found only $($versions -join ', ')" } else { 'found none' })."
    }
}

function Invoke-DotNet {
    & dotnet @args | Out-Host
    if ($LASTEXITCODE -ne 0) { throw "dotnet $($args -join ' ') ended with $LASTEXITCODE." }
}

# The same PowerShell that runs this script, in a process of its own: so the module's files stay free, and nothing loaded here is in the way there.
function Invoke-PowerShell {
    $first = [Environment]::GetCommandLineArgs()[0]
    $executable = (Get-Process -Id $PID).Path
    $prefix = @(if ($first -like '*.dll') { $first })
    & $executable @prefix -NoLogo -NoProfile -NonInteractive -File @args | Out-Host
}

function Invoke-Build {
    if (Test-Path -LiteralPath $moduleFolder) { Remove-Item -LiteralPath $moduleFolder -Recurse -Force }
    New-Item -ItemType Directory -Path $moduleFolder -Force > $null
    foreach ($framework in $frameworks) {
        Publish-Project 'LayerTools' $framework (Join-Path $moduleFolder $framework)
    }

    Publish-Project 'LayerTools.Loader' 'netcoreapp3.1' (Join-Path $moduleFolder 'loader/Core')
    Publish-Project 'LayerTools.Loader' 'netstandard2.0' (Join-Path $moduleFolder 'loader/Desktop')
    Write-Notices
    Move-NativeLibraries
    Get-ChildItem -LiteralPath $moduleFolder -Recurse -File | Where-Object Name -Match '\.(pdb|deps\.json)$|^LayerTools(\..+)?\.xml$' | Remove-Item
    Copy-Item -Path (Join-Path $PSScriptRoot 'Module/*') -Destination $moduleFolder -Recurse -Exclude 'Licenses'
    Copy-Item -LiteralPath (Join-Path $PSScriptRoot 'LICENSE') -Destination $moduleFolder
    Write-Host "Built $moduleFolder"
}

function Publish-Project([string] $Name, [string] $Framework, [string] $Destination) {
    Invoke-DotNet publish (Join-Path $PSScriptRoot "src/$Name") --configuration Release --framework $Framework --output $Destination --verbosity quiet --nologo
}

# One copy of each native library, for both frameworks, in a folder named after its platform.
function Move-NativeLibraries {
    foreach ($platform in $nativePlatforms) {
        $source = Join-Path $moduleFolder "net8.0/runtimes/$platform/native"
        $destination = New-Item -ItemType Directory -Path (Join-Path $moduleFolder $platform)
        Get-ChildItem -LiteralPath $source -File -Exclude '*.pdb' | Move-Item -Destination $destination
    }

    foreach ($framework in $frameworks) {
        # Assemblies that differ by platform: the general one lies beside the others already.
        $runtimes = Join-Path $moduleFolder "$framework/runtimes"
        if (Test-Path -LiteralPath $runtimes) { Remove-Item -LiteralPath $runtimes -Recurse }
    }
}

# What the licences of the shipped packages ask for, from the packages themselves.
function Write-Notices {
    $packages = foreach ($framework in $frameworks) {
        $dependencies = Get-Content -LiteralPath (Join-Path $moduleFolder "$framework/LayerTools.deps.json") -Raw | ConvertFrom-Json
        $target = $dependencies.targets.($dependencies.runtimeTarget.name)
        foreach ($package in $target.PSObject.Properties) {
            $isPackage = $dependencies.libraries.($package.Name).type -eq 'package'
            $isShipped = @($package.Value.PSObject.Properties | Where-Object Name -In 'runtime', 'runtimeTargets', 'native').Count -gt 0
            if ($isPackage -and $isShipped) { $package.Name }
        }
    }

    $root = (& dotnet msbuild (Join-Path $PSScriptRoot 'src/LayerTools') -getProperty:NuGetPackageRoot) | Select-Object -Last 1
    $notices = @($packages | Sort-Object -Unique | ForEach-Object { Get-Notice (Join-Path $root $_.ToLowerInvariant()) })
    $notices += [pscustomobject]@{
        Title = 'Noto Sans Regular and Bold, fonts inside LayerTools.Sheets.dll'
        Text = (Get-Content -LiteralPath (Join-Path $PSScriptRoot 'src/LayerTools.Sheets/Fonts/OFL.txt') -Raw).TrimEnd()
    }
    $lines = @('LayerTools ships the following libraries and fonts, unchanged, under their own licences.')
    foreach ($group in $notices | Group-Object Text) {
        $lines += '', ('=' * 100)
        $lines += $group.Group.Title
        $lines += ('-' * 100), $group.Name
    }

    Set-Content -LiteralPath (Join-Path $moduleFolder 'THIRD-PARTY-NOTICES.txt') -Value $lines -Encoding utf8
}

function Get-Notice([string] $PackageFolder) {
    $metadata = ([xml](Get-Content -LiteralPath (Get-Item -Path "$PackageFolder/*.nuspec").FullName -Raw)).package.metadata
    $files = @(Get-ChildItem -LiteralPath $PackageFolder -File | Where-Object Name -Match '^(LICEN[SC]E|THIRD-PARTY-NOTICES)')
    if (-not $files) {
        $files = @(Get-Item -Path (Join-Path $PSScriptRoot "Module/Licenses/$($metadata.license.InnerText).txt"))
    }

    # Not every package says whose copyright it is; all name their authors.
    $owner = ($metadata['copyright'] ?? $metadata['authors']).InnerText
    [pscustomobject]@{
        Title = "$($metadata.id) $($metadata.version), $owner $($metadata.projectUrl)"
        Text = ($files | ForEach-Object { (Get-Content -LiteralPath $_.FullName -Raw).TrimEnd() }) -join "`n`n"
    }
}

function Invoke-Test {
    Invoke-Build
    $results = Join-Path $out 'results'
    if (Test-Path -LiteralPath $results) { Remove-Item -LiteralPath $results -Recurse -Force }
    $suites = @($testProjects | ForEach-Object { Invoke-UnitTests $_ $results }) + (Invoke-ModuleTests $results)

    $skips = @($suites | ForEach-Object { $_.Skips })
    if ($skips) { Write-Host "`nSkipped:" }
    foreach ($reason in $skips | Group-Object Reason) {
        Write-Host "  $($reason.Count) x $($reason.Name)"
        $reason.Group | ForEach-Object { Write-Host "      $($_.Name)" }
    }

    Write-Host ''
    $suites | ForEach-Object { Write-Host ('{0,-40} {1,6} passed {2,4} failed {3,4} skipped' -f $_.Name, $_.Passed, $_.Failed, $_.Skips.Count) }
    $passed = ($suites | Measure-Object Passed -Sum).Sum
    $failed = ($suites | Measure-Object Failed -Sum).Sum
    Write-Host "$passed passed, $failed failed$(if ($skips) { ", $($skips.Count) skipped" })"
    return $failed -eq 0
}

function Invoke-UnitTests([string] $Name, [string] $ResultFolder) {
    & dotnet test --project (Join-Path $PSScriptRoot "tests/$Name") --configuration Release --verbosity quiet --no-ansi --no-progress `
        --results-directory $ResultFolder --report-xunit-xml --report-xunit-xml-filename "$Name.xml" | Out-Host
    $exitCode = $LASTEXITCODE
    $report = Join-Path $ResultFolder "$Name.xml"
    $tests = @()
    if (Test-Path -LiteralPath $report) {
        $tests = @(([xml](Get-Content -LiteralPath $report -Raw)).SelectNodes('//test'))
    }

    $skips = @($tests | Where-Object result -EQ 'Skip' | ForEach-Object { [pscustomobject]@{ Name = $_.name; Reason = $_.SelectSingleNode('reason').InnerText } })
    New-SuiteResult $Name (@($tests | Where-Object result -EQ 'Pass').Count) (@($tests | Where-Object result -EQ 'Fail').Count) $skips $exitCode
}

function Invoke-ModuleTests([string] $ResultFolder) {
    $project = Join-Path $PSScriptRoot 'tests/Module.Tests'
    Invoke-DotNet restore $project --verbosity quiet --nologo
    $pester = & dotnet msbuild $project -getProperty:PesterManifest | Select-Object -Last 1
    $report = Join-Path $ResultFolder 'Module.Tests.json'
    Invoke-PowerShell (Join-Path $project 'Invoke-ModuleTests.ps1') -PesterManifest $pester -ModuleFolder $moduleFolder -ReportPath $report
    $exitCode = $LASTEXITCODE
    $result = [pscustomobject]@{ Passed = 0; Failed = 0; Skips = @() }
    if (Test-Path -LiteralPath $report) { $result = Get-Content -LiteralPath $report -Raw | ConvertFrom-Json }
    New-SuiteResult 'Module.Tests' $result.Passed $result.Failed @($result.Skips) $exitCode
}

# A suite that ran nothing, or broke off without a failed test to show for it, counts as one failure.
function New-SuiteResult([string] $Name, [int] $Passed, [int] $Failed, [object[]] $Skips, [int] $ExitCode) {
    if ($Failed -eq 0 -and ($Passed -eq 0 -or $ExitCode -ne 0)) {
        Write-Host "$Name $(if ($Passed) { "ended with $ExitCode" } else { 'ran no test' })."
        $Failed = 1
    }

    [pscustomobject]@{ Name = $Name; Passed = $Passed; Failed = $Failed; Skips = $Skips }
}

function Invoke-Demo {
    Invoke-Build
    Invoke-PowerShell (Join-Path $PSScriptRoot 'tests/Figure/Demo.ps1') -ModuleFolder $moduleFolder -OutputFolder (Join-Path $out 'demo')
    return $LASTEXITCODE -eq 0
}

function Invoke-Bench {
    Invoke-Build
    Invoke-PowerShell (Join-Path $PSScriptRoot 'tests/Benchmarks/Compare.ps1') -ModuleFolder $moduleFolder -OutputFolder (Join-Path $out 'bench')
    return $LASTEXITCODE -eq 0
}

function Invoke-Package {
    Invoke-Build
    $manifest = Import-PowerShellDataFile -LiteralPath (Join-Path $moduleFolder 'LayerTools.psd1')
    $tags = @('PSModule', 'PSIncludes_Cmdlet') + $manifest.PrivateData.PSData.Tags + ($manifest.CmdletsToExport | ForEach-Object { "PSCmdlet_$_" })
    # Escaped, since a bare comma or semicolon starts the next property.
    $properties = @{ ModuleFolder = $moduleFolder; Version = $manifest.ModuleVersion; Description = $manifest.Description; PackageTags = $tags -join ' ' }
    $arguments = $properties.GetEnumerator() | ForEach-Object { "-p:$($_.Key)=$([uri]::EscapeDataString($_.Value))" }
    Invoke-DotNet pack (Join-Path $PSScriptRoot 'src/LayerTools.Package') --output (Join-Path $out 'package') --verbosity quiet --nologo @arguments
    Write-Host "Packed $((Get-Item -Path (Join-Path $out 'package/*.nupkg')).FullName)"
}

function Invoke-Clean {
    if (Test-Path -LiteralPath $out) { Remove-Item -LiteralPath $out -Recurse -Force }
    Get-ChildItem -LiteralPath (Join-Path $PSScriptRoot 'src'), (Join-Path $PSScriptRoot 'tests') -Recurse -Directory -Force |
        Where-Object Name -In 'bin', 'obj' | Where-Object { Test-Path -LiteralPath $_.FullName } | Remove-Item -Recurse -Force
}

try {
    if ($Task -ne 'clean') { Assert-Sdk }
    $succeeded = & "Invoke-$Task"
}
catch {
    [Console]::Error.WriteLine("build.ps1 $Task`: $_")
    exit 1
}

exit $(if ($succeeded -eq $false) { 1 } else { 0 })
