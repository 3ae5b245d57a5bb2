# Layered files to work on, in a folder that a test may write to.

$fixtures = (Resolve-Path "$PSScriptRoot/../../Fixtures").Path

<#
.SYNOPSIS
Copies a fixture, named without its extension, and returns the copy's path.
#>
function Copy-Fixture([Parameter(Mandatory)] [string] $Name, [Parameter(Mandatory)] [string] $Destination) {
    $folder = Split-Path $Destination
    if (-not (Test-Path -LiteralPath $folder)) { New-Item -ItemType Directory -Path $folder > $null }
    [IO.File]::Copy((Join-Path $fixtures "$Name.psd"), $Destination, $true)
    $Destination
}

<#
.SYNOPSIS
Runs a script and returns what it writes to each stream: Output, Errors, Warnings.
#>
function Get-Streams([Parameter(Mandatory)] [scriptblock] $Script) {
    $all = @(& $Script *>&1)
    [pscustomobject]@{
        Output = @($all | Where-Object { $_ -isnot [Management.Automation.ErrorRecord] -and $_ -isnot [Management.Automation.InformationalRecord] -and $_ -isnot [Management.Automation.InformationRecord] })
        Errors = @($all | Where-Object { $_ -is [Management.Automation.ErrorRecord] })
        Warnings = @($all | Where-Object { $_ -is [Management.Automation.WarningRecord] } | ForEach-Object Message)
        Verbose = @($all | Where-Object { $_ -is [Management.Automation.VerboseRecord] } | ForEach-Object Message)
        Information = @($all | Where-Object { $_ -is [Management.Automation.InformationRecord] } | ForEach-Object { "$($_.MessageData)" })
    }
}

Export-ModuleMember -Function Copy-Fixture, Get-Streams
