<#
.SYNOPSIS
How far the memory of a fresh session rises while a file is edited and saved, in MB over what the session holds with the module imported and the file read.
.DESCRIPTION
Writes one number. Peak working set of this process, so it has to run in one of its own.
#>
[CmdletBinding()]
param(
    [Parameter(Mandatory)] [string] $ModuleFolder,
    [Parameter(Mandatory)] [string] $Path,
    [Parameter(Mandatory)] [string] $Destination,
    [Parameter(Mandatory)] [ValidateSet('rename', 'redraw')] [string] $Edit
)

$ErrorActionPreference = 'Stop'
Import-Module $ModuleFolder
$file = Get-LayerFile -LiteralPath $Path
[GC]::Collect()
$idle = (Get-Process -Id $PID).WorkingSet64
if ($Edit -eq 'rename') { $file | Rename-Layer -Match '$' -Replacement ' renamed' > $null }
else {
    $seen = $file.GetLayers() | Where-Object { "$($_.Kind)" -eq 'Pixel' -and $_.EffectivelyVisible } | Select-Object -First 1
    $file | Set-Layer -LayerNumber $seen.LayerNumber -Visible $false > $null
}
if (-not $file.PendingCount) { throw 'The edit changed nothing.' }
$file | Save-LayerFile -Destination $Destination -Force -WarningAction SilentlyContinue > $null
$process = Get-Process -Id $PID
[Math]::Max(0, ($process.PeakWorkingSet64 - $idle) / 1MB).ToString('0.0', [cultureinfo]::InvariantCulture)
